// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/pages/result_view.h"

class QDoubleSpinBox;
class QToolButton;
class QVBoxLayout;

namespace bothways::app {

class DayPlot;
class EffectPlot;
class VerdictMark;

/// The answer: verdict in one sentence, its qualifiers, the interval as a picture, the day.
class ResultPage final : public ResultView {
    Q_OBJECT

public:
    explicit ResultPage(QWidget* parent = nullptr);
    ~ResultPage() override;

signals:
    /// The user wants another margin or confidence; whoever owns the study computes anew.
    void marginAsked(double margin_pct);
    void confidenceAsked(double confidence);

protected:
    void refresh() override;

private:
    QWidget* makeVerdict();
    QWidget* makeChoices();
    void showQualifiers();
    [[nodiscard]] QWidget* reservation(const QString& objectName, const QString& sentence,
                                       const QString& topic, const QString& name);

    VerdictMark* m_mark = nullptr;
    QToolButton* m_help = nullptr;
    QLabel* m_verdict = nullptr;
    QLabel* m_inUnits = nullptr;
    QLabel* m_whatItWouldTake = nullptr;
    QVBoxLayout* m_qualifiers = nullptr;
    QDoubleSpinBox* m_margin = nullptr;
    QDoubleSpinBox* m_confidence = nullptr;
    QLabel* m_marginLabel = nullptr;
    QLabel* m_confidenceLabel = nullptr;
    QLabel* m_detectable = nullptr;
    QLabel* m_tally = nullptr;
    EffectPlot* m_effect = nullptr;
    DayPlot* m_day = nullptr;
};

} // namespace bothways::app
