// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/theme.h"
#include "app/desktop/look/units_shown.h"
#include "app/desktop/plots/trace_plot.h"
#include "app/desktop/plots/trace_series.h"

#include <QWidget>

#include <map>
#include <memory>
#include <vector>

class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;
class QSplitter;
class QTabWidget;

namespace bothways::app {

class TraceScatter;

/// The recordings of a study's runs: channels under one another on one axis of time or distance,
/// several runs over one another, findings as bands that can be jumped to; and any channel against
/// any other.
///
/// Reads a channel when it is first shown. Colours stay with the run, whatever else is shown.
/// Ctrl+Page Down and Ctrl+Page Up go to the next and the previous finding.
class TraceView final : public QWidget {
    Q_OBJECT

public:
    explicit TraceView(QWidget* parent = nullptr);
    ~TraceView() override;

    /// All runs that can be looked at. Those that were shown stay so; else the first with a
    /// recording is.
    void setRuns(std::vector<TracedRun> runs);
    /// Asks again for channels that were not there yet (samples() gave null).
    void takeSamples();
    void setUnits(const UnitsShown& units);
    void setTheme(const Theme& theme);

    /// Shows these runs (by number), laid over one another.
    void showRuns(const std::vector<int>& runs);
    /// Shows the run of a finding and the place of it, with air around.
    void showFinding(const core::Finding& finding);
    void setAxis(TraceAxis axis);

    [[nodiscard]] std::vector<int> shownRuns() const;
    [[nodiscard]] QStringList shownChannels() const;
    [[nodiscard]] TracePlot& plot() const { return *m_plot; }
    [[nodiscard]] TraceScatter& scatter() const { return *m_scatter; }

signals:
    void shownRunsChanged();
    void runActivated(int run);                          ///< back from the trace to the list
    void findingActivated(const core::Finding& finding); ///< a band was opened

protected:
    void changeEvent(QEvent* event) override;

private:
    void build();
    [[nodiscard]] QWidget* buildLists();
    [[nodiscard]] QWidget* buildOverTime();
    [[nodiscard]] QWidget* buildAgainst();
    void fitLists();
    void fillLists(const std::vector<int>& runsBefore);
    void tickUsualChannels();
    void refresh();
    void refreshScatter();
    void goToFinding(int step);
    [[nodiscard]] TraceStrip stripOf(const QString& channel) const;
    [[nodiscard]] Qt::PenStyle dashesOf(int row, int part = 0) const;
    void dressRuns();
    void addLines(TraceStrip& strip, const std::string& channel, bool setPoint) const;
    [[nodiscard]] std::shared_ptr<const TraceSeries> seriesOf(std::size_t run,
                                                              const std::string& channel) const;
    [[nodiscard]] double placeOf(std::size_t run, double time_s) const;
    void addBandsAndMarks(TracePlot::Content& content);
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] double perMetre() const;

    std::vector<TracedRun> m_runs;
    std::vector<DistanceOfTime> m_distances; ///< a run each; empty while the axis is time
    struct SeriesKey {
        std::size_t run;
        std::string channel;
        friend auto operator<=>(const SeriesKey&, const SeriesKey&) = default;
    };
    mutable std::map<SeriesKey, std::shared_ptr<const TraceSeries>> m_series;
    std::vector<core::Finding> m_shownFindings; ///< in order of place
    int m_finding = -1;
    bool m_filling = false;
    QStringList m_recorded;        ///< channels of all runs, as recorded
    bool m_channelsChosen = false; ///< by a person, or for a finding: they stay as they are
    TraceAxis m_axis = TraceAxis::time;
    UnitsShown m_units;
    Theme m_theme = Theme::light();

    QLabel* m_nothing = nullptr;
    QSplitter* m_splitter = nullptr;
    QTabWidget* m_tabs = nullptr;
    QListWidget* m_runList = nullptr;
    QListWidget* m_channelList = nullptr;
    QLabel* m_runsLabel = nullptr;
    QLabel* m_channelsLabel = nullptr;
    QComboBox* m_axisBox = nullptr;
    QPushButton* m_previous = nullptr;
    QPushButton* m_next = nullptr;
    QPushButton* m_all = nullptr;
    TracePlot* m_plot = nullptr;
    QComboBox* m_across = nullptr;
    QComboBox* m_up = nullptr;
    QLabel* m_againstLabel = nullptr;
    TraceScatter* m_scatter = nullptr;
};

} // namespace bothways::app
