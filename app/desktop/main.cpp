// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/main_window.h"
#include "app/desktop/preferences.h"

#include <QApplication>
#include <QCommandLineParser>

using namespace bothways::app;

int main(int argc, char** argv)
{
    QApplication application(argc, argv);
    QCoreApplication::setOrganizationName("Bothways");
    QCoreApplication::setApplicationName("bothways-desktop");

    QCommandLineParser parser;
    parser.addHelpOption();
    const QCommandLineOption picture("picture", "Paint the main window into FILE and end.", "FILE");
    const QCommandLineOption page("page", "Show the page NAME first.", "NAME");
    parser.addOptions({picture, page});
    parser.process(application);

    Preferences preferences;
    MainWindow window(preferences);
    if (parser.isSet(picture))
        return window.grab().save(parser.value(picture), "PNG") ? 0 : 4;
    window.show();
    return QApplication::exec();
}
