// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/about_box.h"

#include <QCoreApplication>

namespace bothways::app {

AboutBox::AboutBox(QWidget* parent) : QMessageBox(parent)
{
    setObjectName("aboutBox");
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("About Bothways"));
    setTextFormat(Qt::PlainText);
    setText(tr("Bothways %1").arg(QCoreApplication::applicationVersion()));
    setInformativeText(
        tr("Logs fuel-economy runs driven out and back, and says honestly whether there is an "
           "effect.\n\nCopyright (C) 2026 The Bothways developers. Free software under the GNU "
           "General Public License, version 3 or later; it comes without any warranty. Not for "
           "certification.\n\nMade with Qt %1, QCustomPlot, SQLite, SQLiteCpp, Boost, Eigen, "
           "fast_float, fmt and zstd.")
            .arg(qVersion()));
    setStandardButtons(QMessageBox::Close);
}

} // namespace bothways::app
