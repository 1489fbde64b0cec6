// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/study_files.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/plots/plot_view.h"
#include "app/desktop/window/main_window.h"
#include "tests/bench/first_picture.h"

#include <QApplication>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <vector>

// Processor time from the start of a process to the first picture that shows the answer: the
// window on a study, the window that makes the demo first, and a bare window with one plot, in
// turn, each a process of its own.

using namespace bothways::app;
using bothways::bench::untilPainted;

namespace {

constexpr int kRounds = 15; // odd, for a median

/// @param file  the study; empty: the demo is made
void showStudy(QApplication& application, const QString& settings, const QString& file)
{
    Preferences preferences(settings);
    installTranslation(application, preferences);
    followAppearance(application, preferences);
    MainWindow window(preferences);
    window.resize(bothways::bench::kWindow);
    window.show();
    if (file.isEmpty())
        window.openDemo();
    else
        window.openFile(file);
    while (window.isLoading())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    untilPainted(*window.findChild<PlotView*>("dayPlot"));
    std::printf("%.3f\n", bothways::bench::processor_ms());
}

/// What a process needs for its picture; each says so itself.
double once_ms(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    process.waitForFinished(-1);
    bool good = false;
    const double took_ms = process.readAllStandardOutput().trimmed().toDouble(&good);
    return good ? took_ms : std::nan("");
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

void compare()
{
    const QTemporaryDir scratch;
    const QString settings = scratch.filePath("preferences.ini");
    const QString study = scratch.filePath("study.bothways");
    {
        auto demo = makeDemoStudy("bench");
        if (!demo || !QFile::copy(demo.value()->path(), study)) {
            std::puts("there is no demo");
            return;
        }
    }
    const QString here = QCoreApplication::applicationFilePath();
    std::vector<double> bare, open, demo;
    for (int round = 0; round < kRounds; ++round) {
        bare.push_back(once_ms(BARE_WINDOW, {}));
        open.push_back(once_ms(here, {"open", settings, study}));
        demo.push_back(once_ms(here, {"open", settings}));
    }
    std::puts("processor time to the first picture, ms: median, least; ratio of the medians");
    const auto line = [&](const char* name, const std::vector<double>& times) {
        std::printf("%-28s %7.0f %7.0f %7.2f\n", name, median(times),
                    *std::min_element(times.begin(), times.end()), median(times) / median(bare));
    };
    line("bare window with one plot", bare);
    line("the window on a study", open);
    line("the window makes the demo", demo);
}

} // namespace

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    QCoreApplication::setOrganizationName("Bothways");
    QCoreApplication::setApplicationName("bothways-bench"); // its own place for the demo
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.value(1) == "open")
        showStudy(application, arguments.value(2), arguments.value(3));
    else
        compare();
    return 0;
}
