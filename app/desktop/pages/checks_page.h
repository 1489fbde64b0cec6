// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/words.h"
#include "app/desktop/pages/result_view.h"

#include <map>

class QBoxLayout;
class QToolButton;

namespace bothways::app {

class CheckMark;
class PlotView;

/// The assumptions behind the interval: what was looked at, what was found, what it means for this
/// study; a small picture beside each. (Method, sections 7 and 10.)
class ChecksPage final : public ResultView {
    Q_OBJECT

public:
    explicit ChecksPage(QWidget* parent = nullptr);
    ~ChecksPage() override;

protected:
    void refresh() override;

private:
    struct Line {
        CheckMark* mark = nullptr;
        QLabel* name = nullptr;
        QLabel* sentence = nullptr;
        QToolButton* help = nullptr;
    };
    PlotView* addGroup(QBoxLayout& column, std::initializer_list<CheckKind> kinds,
                       const char* plotName);
    void addLine(QBoxLayout& column, CheckKind kind);

    QLabel* m_summary = nullptr;
    QLabel* m_power = nullptr;
    std::map<CheckKind, Line> m_lines;
    PlotView* m_quantiles = nullptr;
    PlotView* m_residuals = nullptr;
    PlotView* m_spread = nullptr;
    PlotView* m_baseline = nullptr;
    PlotView* m_direction = nullptr;
};

} // namespace bothways::app
