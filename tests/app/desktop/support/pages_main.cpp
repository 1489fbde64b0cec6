// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QApplication>
#include <QTranslator>

int main(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    ::testing::InitGoogleTest(&argc, argv);
    QApplication application(argc, argv);
    QApplication::setStyle(QStringLiteral("Fusion"));
    QTranslator plurals; // "1 pair", "2 pairs"
    if (plurals.load(QStringLiteral(":/translations/bothways_en.qm")))
        QApplication::installTranslator(&plurals);
    return RUN_ALL_TESTS();
}
