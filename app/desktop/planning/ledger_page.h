// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/result_set.h"
#include "app/desktop/look/words.h"
#include "app/desktop/plots/plot_view.h"
#include "core/planning/known_of_study.h"
#include "core/planning/ledger.h"

#include <QWidget>

#include <array>
#include <memory>
#include <optional>

class QBoxLayout;
class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QGridLayout;
class QLabel;
class QTableWidget;

namespace bothways::app {

class LedgerFlow;

/// Measured interval and expected range in one picture, in per cent of consumption.
class ExpectedPlot final : public PlotView {
    Q_OBJECT

public:
    using PlotView::PlotView;
    /// @param analysis  null or without a headline: the expected range alone
    void show(const core::Ledger& ledger, const core::Analysis* analysis,
              const NumberWords& numbers);
};

/// The energy ledger: the effect to expect from first principles, every factor editable and with
/// its source, beside the measured one. (Method, section 11.)
class LedgerPage final : public QWidget {
    Q_OBJECT

public:
    explicit LedgerPage(QWidget* parent = nullptr);
    /// The study whose consumption, speed, fuel and detectable effect are used; null: none open.
    void setResult(std::shared_ptr<const ResultSet> result);
    void setUnits(const UnitsShown& units);
    void setTheme(const Theme& theme);
    [[nodiscard]] const std::optional<core::Ledger>& ledger() const { return m_ledger; }

private:
    using RangeFields = std::array<QDoubleSpinBox*, 3>;

    [[nodiscard]] QWidget* makeForm();
    [[nodiscard]] QBoxLayout* makeAnswer();
    [[nodiscard]] RangeFields addRange(QGridLayout& grid, const QString& objectName,
                                       const QString& label, const QString& source);
    void takeFuel();
    void nameTerms();
    void showFactors(const core::LedgerOptions& options);
    [[nodiscard]] core::LedgerOptions options() const;
    void recompute();
    void showLedger();
    void showTable();
    [[nodiscard]] QString wattsSentence() const;
    [[nodiscard]] QString accessorySentence() const;

    NumberWords m_numbers{UnitsShown{}};
    std::shared_ptr<const ResultSet> m_result;
    std::optional<core::Ledger> m_ledger;
    core::KnownOfStudy m_known; ///< that the fields were filled from
    bool m_filling = false;

    QDoubleSpinBox* m_output = nullptr;
    QDoubleSpinBox* m_speed = nullptr;
    QDoubleSpinBox* m_consumption = nullptr;
    QComboBox* m_fuel = nullptr;
    QDoubleSpinBox* m_heating = nullptr;
    QDoubleSpinBox* m_induction = nullptr;
    QCheckBox* m_relief = nullptr;
    QCheckBox* m_cost = nullptr;
    RangeFields m_alternator{}, m_marginal{}, m_generator{}, m_drive{};
    QLabel* m_answer = nullptr;
    QLabel* m_explained = nullptr;
    QLabel* m_watts = nullptr;
    QLabel* m_beside = nullptr; ///< what the runs say
    QLabel* m_accessory = nullptr;
    QTableWidget* m_table = nullptr;
    LedgerFlow* m_flow = nullptr;
    ExpectedPlot* m_plot = nullptr;
};

} // namespace bothways::app
