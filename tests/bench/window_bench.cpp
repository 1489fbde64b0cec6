// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/study_document.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/window/main_window.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QTemporaryDir>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <vector>

// A sheet of 200 runs into the window: from the order until its verdict has been painted.

using namespace bothways::app;

namespace {

constexpr int kRuns = 200;
constexpr int kTimes = 11; // odd, for a median

/// Ten blocks, A and B in turn, on one day.
void writeSheet(const QString& file)
{
    QFile sheet(file);
    if (!sheet.open(QIODevice::WriteOnly))
        std::abort();
    sheet.write("run,configuration,direction,start,l_per_100km\n");
    QDateTime start(QDate(2026, 5, 9), QTime(1, 0));
    for (int run = 0; run < kRuns; ++run) {
        const int block = run / (kRuns / 10);
        const bool b = block % 2 == 1;
        const double noise = 0.08 * std::sin(12.9898 * run);
        const double used = (run % 2 == 0 ? 8.4 : 8.2) + (b ? -0.15 : 0.0) + noise;
        sheet.write(QString("%1,%2,%3,%4,%5\n")
                        .arg(run + 1)
                        .arg(b ? "B" : "A", run % 2 == 0 ? "out" : "return",
                             start.toString("yyyy-MM-ddTHH:mm"), QString::number(used, 'f', 2))
                        .toUtf8());
        start = start.addSecs(6 * 60);
    }
}

struct Took {
    double clock_ms, processor_ms;
};

Took fromOrderToVerdict(MainWindow& window, const QString& sheet)
{
    QElapsedTimer timer;
    timer.start();
    const std::clock_t processor = std::clock();
    if (!window.openFile(sheet))
        std::abort();
    const auto* verdict = window.findChild<QLabel*>("verdict");
    while (window.document()->isBusy() || !verdict->isVisible() || verdict->text().isEmpty())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 1);
    window.grab(); // all of it is painted
    return {static_cast<double>(timer.nsecsElapsed()) / 1e6,
            1e3 * static_cast<double>(std::clock() - processor) / CLOCKS_PER_SEC};
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const QTemporaryDir folder;
    const QString sheet = folder.filePath("day.csv");
    writeSheet(sheet);
    Preferences preferences(folder.filePath("preferences.ini"));
    MainWindow window(preferences);
    window.show();
    std::vector<double> clock, processor;
    for (int i = 0; i < kTimes; ++i) {
        const Took took = fromOrderToVerdict(window, sheet);
        clock.push_back(took.clock_ms);
        processor.push_back(took.processor_ms);
        window.closeStudy();
    }
    std::printf("first: %.0f ms, of processors %.0f ms\n", clock.front(), processor.front());
    for (std::vector<double>* times : {&clock, &processor})
        std::sort(times->begin(), times->end());
    std::printf("median of %d: %.0f ms, of processors %.0f ms\n", kTimes, clock[kTimes / 2],
                processor[kTimes / 2]);
}
