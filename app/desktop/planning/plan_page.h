// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/result_set.h"
#include "app/desktop/look/words.h"
#include "core/planning/plan.h"
#include "core/planning/sequence_study.h"

#include <QFutureWatcher>
#include <QWidget>

#include <memory>
#include <optional>
#include <stop_token>

class QBoxLayout;
class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLabel;
class QPushButton;
class QSpinBox;
class QTableWidget;
class QTimer;

namespace bothways::app {

class PowerPlot;
class WidthsPlot;
struct Theme;

/// What a day of driving could show, before it is driven: plan, power curve, the sequences that fit
/// into the hours, what each is weak against. (Method, section 8.)
class PlanPage final : public QWidget {
    Q_OBJECT

public:
    explicit PlanPage(QWidget* parent = nullptr);
    ~PlanPage() override;

    /// The study whose noise, stretch and plan are offered; null: none open.
    void setResult(std::shared_ptr<const ResultSet> result);
    /// To a study that is open for reading only, no plan is tied.
    void setReadOnly(bool readOnly);
    void setUnits(const UnitsShown& units);
    void setTheme(const Theme& theme);

    /// Takes the noise that was pooled from studies; `names` says which.
    void setNoise(const core::Noise& noise, const QStringList& names);

    /// The plan on the page; empty while the fields allow none.
    [[nodiscard]] const std::optional<core::Plan>& plan() const { return m_plan; }
    /// Sequences for the hours are still being simulated.
    [[nodiscard]] bool isBusy() const;

signals:
    void tieRequested(const bothways::core::PlannedStudy& plan);
    void noiseStudiesRequested();
    void runCardRequested(const bothways::core::Plan& plan);

private:
    struct SequenceRow {
        core::Plan plan;
        core::SequenceWeakness weakness;
    };
    using SequenceRows = std::vector<SequenceRow>;

    [[nodiscard]] core::PlanOptions options() const;
    [[nodiscard]] QWidget* makeForm();
    [[nodiscard]] QBoxLayout* makeAnswer();
    void addNoiseFields(QFormLayout& form);
    void recompute();
    void followTie();
    void showPlan();
    void showFault(const QString& words);
    void startSequences();
    void showSequences();
    void showWidths(const SequenceRows& rows);
    void takeNoiseOfStudy();

    NumberWords m_numbers{UnitsShown{}};
    std::shared_ptr<const ResultSet> m_result;
    std::optional<core::Plan> m_plan;
    std::optional<core::Noise> m_measured; ///< what the noise field shows, while it was measured

    QComboBox* m_sequence = nullptr;
    QSpinBox* m_pairs = nullptr;
    QDoubleSpinBox* m_pairMinutes = nullptr;
    QDoubleSpinBox* m_switchMinutes = nullptr;
    QDoubleSpinBox* m_stretch = nullptr;
    QDoubleSpinBox* m_noise = nullptr;
    QPushButton* m_noiseOfStudy = nullptr;
    QLabel* m_noiseFrom = nullptr;
    QCheckBox* m_wanted = nullptr;
    QDoubleSpinBox* m_want = nullptr;
    QDoubleSpinBox* m_power = nullptr;
    QDoubleSpinBox* m_confidence = nullptr;
    QDoubleSpinBox* m_hours = nullptr;
    QLabel* m_answer = nullptr;
    QLabel* m_upper = nullptr;
    QLabel* m_weak = nullptr;
    QLabel* m_sequencesState = nullptr;
    PowerPlot* m_plot = nullptr;
    WidthsPlot* m_widths = nullptr;
    QLabel* m_widthsWords = nullptr;
    QLabel* m_known = nullptr; ///< with the noise of earlier days
    QTableWidget* m_sequences = nullptr;
    QPushButton* m_tie = nullptr;
    bool m_readOnly = false;
    QPushButton* m_card = nullptr;
    QTimer* m_later = nullptr;
    std::stop_source m_stop;
    QFutureWatcher<std::shared_ptr<core::Result<SequenceRows>>>* m_watcher = nullptr;
};

} // namespace bothways::app

Q_DECLARE_METATYPE(bothways::core::PlannedStudy)
Q_DECLARE_METATYPE(bothways::core::Plan)
