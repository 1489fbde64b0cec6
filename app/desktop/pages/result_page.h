// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/pages/result_view.h"

#include <optional>

class QDoubleSpinBox;
class QTableWidget;
class QToolButton;
class QVBoxLayout;

namespace bothways::app {

class DayPlot;
class EffectPlot;
class ForestPlot;
class VerdictMark;

/// The answer: verdict in one sentence, its qualifiers, the interval as a picture, the day.
class ResultPage final : public ResultView {
    Q_OBJECT

public:
    explicit ResultPage(QWidget* parent = nullptr);
    ~ResultPage() override;

signals:
    /// The user wants another margin, confidence or claim; whoever owns the study computes anew.
    void optionsAsked(double margin_pct, double confidence, std::optional<double> claim_pct);

protected:
    void refresh() override;

private:
    QWidget* makeVerdict();
    QWidget* makeChoices();
    void showChoices();
    void showQualifiers();
    void showDays();
    [[nodiscard]] QWidget* reservation(const QString& objectName, const QString& sentence,
                                       const QString& topic, const QString& name);

    VerdictMark* m_mark = nullptr;
    QToolButton* m_help = nullptr;
    QLabel* m_verdict = nullptr;
    QLabel* m_inUnits = nullptr;
    QLabel* m_claimed = nullptr; ///< what is so at least, and what becomes of a claim
    QLabel* m_whatItWouldTake = nullptr;
    QVBoxLayout* m_qualifiers = nullptr;
    QDoubleSpinBox* m_margin = nullptr;
    QDoubleSpinBox* m_confidence = nullptr;
    QDoubleSpinBox* m_claim = nullptr; ///< 0: nobody claims anything
    QLabel* m_claimLabel = nullptr;
    QLabel* m_marginLabel = nullptr;
    QLabel* m_confidenceLabel = nullptr;
    QLabel* m_detectable = nullptr;
    QLabel* m_tally = nullptr;
    EffectPlot* m_effect = nullptr;
    DayPlot* m_day = nullptr;
    QLabel* m_daysHeading = nullptr;
    ForestPlot* m_days = nullptr; ///< each day for itself, where there are several
    QTableWidget* m_daysTable = nullptr;
};

} // namespace bothways::app
