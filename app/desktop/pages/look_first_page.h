// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace bothways::app {

/// Stands before the verdict of a plan that is not fulfilled, once: what a look costs, and the
/// interval that allows it.
class LookFirstPage final : public QWidget {
    Q_OBJECT

public:
    explicit LookFirstPage(QWidget* parent = nullptr);

signals:
    /// The one that holds however often it is looked at.
    void anyLookWanted();
    void verdictWanted();

protected:
    void changeEvent(QEvent* event) override;

private:
    void reword();

    QLabel* m_heading;
    QLabel* m_words;
    QPushButton* m_anyLook;
    QPushButton* m_verdict;
};

} // namespace bothways::app
