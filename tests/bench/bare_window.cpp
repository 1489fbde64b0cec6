// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/first_picture.h"

#include <QApplication>
#include <QMainWindow>

#include <qcustomplot.h>

#include <cstdio>

// The peer of start_bench: the least that a window with a plot is, with the libraries for that.

int main(int argc, char** argv)
{
    QApplication application(argc, argv);
    QMainWindow window;
    window.resize(bothways::bench::kWindow);
    auto* plot = new QCustomPlot;
    plot->addGraph()->setData({0.0, 1.0, 2.0}, {3.0, 1.0, 2.0});
    plot->rescaleAxes();
    window.setCentralWidget(plot);
    window.show();
    bothways::bench::untilPainted(*plot);
    std::printf("%.3f\n", bothways::bench::processor_ms());
    return 0;
}
