// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace bothways::app {

/// Stands in the answer's place while consumption is hidden.
class BlindPage final : public QWidget {
    Q_OBJECT

public:
    /// @param mayShow  false where nothing in the study can be changed
    explicit BlindPage(bool mayShow, QWidget* parent = nullptr);

signals:
    void showWanted(); ///< the discards are settled
};

} // namespace bothways::app
