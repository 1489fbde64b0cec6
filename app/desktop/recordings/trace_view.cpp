// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one view: what its two lists, two pictures and keys do to each other.
#include "app/desktop/recordings/trace_view.h"

#include "app/desktop/look/said.h"
#include "app/desktop/look/words.h"
#include "app/desktop/plots/trace_channels.h"
#include "app/desktop/plots/trace_scatter.h"

#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSplitter>
#include <QTabWidget>

#include <algorithm>
#include <set>

namespace bothways::app {
namespace {

constexpr int kFirstChannels = 5; // shown at first: more would be thin strips
constexpr int kNameRole = Qt::UserRole;

constexpr QSize kSwatch(30, 14);

/// The run's line, with the mark of its configuration on it; hollow, as in the plots, where the run
/// is discarded.
QIcon swatch(const Theme& theme, const TracedRun& run, Qt::PenStyle dashes)
{
    const bool device = run.device;
    QPixmap pixmap(kSwatch);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme.series(device), 1.5, dashes));
    painter.drawLine(0, kSwatch.height() / 2, kSwatch.width(), kSwatch.height() / 2);
    painter.setPen(run.discarded ? QPen(theme.series(device), 1.5) : QPen(Qt::NoPen));
    painter.setBrush(run.discarded ? theme.paper : theme.series(device));
    const QRect mark(kSwatch.width() / 2 - 4, kSwatch.height() / 2 - 4, 9, 9);
    device ? painter.drawRect(mark) : painter.drawEllipse(mark);
    return QIcon(pixmap);
}

QListWidgetItem* addCheckable(QListWidget& list, const QString& text, const QVariant& name)
{
    auto* item = new QListWidgetItem(text, &list);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    item->setCheckState(Qt::Unchecked);
    item->setData(kNameRole, name);
    return item;
}

template <class Job>
void forChecked(const QListWidget& list, Job job)
{
    for (int i = 0; i < list.count(); ++i)
        if (list.item(i)->checkState() == Qt::Checked)
            job(i, *list.item(i));
}

} // namespace

void TraceView::setRuns(std::vector<TracedRun> runs)
{
    const bool sameRecordings =
        std::equal(runs.begin(), runs.end(), m_runs.begin(), m_runs.end(),
                   [](const TracedRun& a, const TracedRun& b) { return a.trace == b.trace; });
    const std::vector<int> before = shownRuns();
    m_runs = std::move(runs);
    if (!sameRecordings)
        m_series.clear();
    m_distances.clear();
    m_finding = -1;
    fillLists(before);
    setAxis(m_axis);
    emit shownRunsChanged();
}

void TraceView::takeSamples()
{
    std::erase_if(m_series, [](const auto& entry) { return !entry.second; });
    if (m_axis == TraceAxis::distance)
        m_series.clear(); // where they lie may be known only now
    setAxis(m_axis);
}

void TraceView::setUnits(const UnitsShown& units)
{
    if (m_units == units)
        return;
    m_units = units;
    if (m_axis == TraceAxis::distance)
        m_series.clear();
    setAxis(m_axis);
}

void TraceView::setTheme(const Theme& theme)
{
    m_theme = theme;
    m_plot->setTheme(theme);
    m_scatter->setTheme(theme);
    refresh();
}

void TraceView::fillLists(const std::vector<int>& runsBefore)
{
    m_filling = true;
    const QStringList before = shownChannels();
    m_runList->clear();
    m_channelList->clear();
    QStringList channels;
    int firstRecorded = -1;
    bool anyShown = false;
    for (std::size_t i = 0; i < m_runs.size(); ++i) {
        const TracedRun& run = m_runs[i];
        QListWidgetItem* item = addCheckable(*m_runList, run.label, run.run);
        if (!run.trace || run.trace->channels().empty()) {
            item->setFlags(Qt::ItemIsSelectable);
            item->setToolTip(tr("This run has no recording."));
            continue;
        }
        if (firstRecorded < 0)
            firstRecorded = static_cast<int>(i);
        if (std::find(runsBefore.begin(), runsBefore.end(), run.run) != runsBefore.end()) {
            item->setCheckState(Qt::Checked);
            anyShown = true;
        }
        for (const core::ChannelInfo& info : run.trace->channels())
            if (const QString name = QString::fromStdString(info.name); !channels.contains(name))
                channels << name;
    }
    if (firstRecorded >= 0 && !anyShown)
        m_runList->item(firstRecorded)->setCheckState(Qt::Checked);
    m_recorded = channels;
    const QSignalBlocker quietAcross(m_across);
    const QSignalBlocker quietUp(m_up);
    m_across->clear();
    m_up->clear();
    for (const QString& channel : inUsualOrder(channels)) {
        const QString label = channelShown(channel.toStdString(), {}, m_units).label;
        m_across->addItem(label, channel);
        m_up->addItem(label, channel);
        const std::string name = channel.toStdString();
        if (std::any_of(channels.begin(), channels.end(),
                        [&](const QString& set) { return setPointOf(set.toStdString()) == name; }))
            continue; // drawn with what it sets
        // No line ends within a unit.
        QListWidgetItem* item = addCheckable(
            *m_channelList, QString(label).replace(u'/', QStringLiteral("/\u2060")), channel);
        item->setToolTip(label); // where the list is too narrow for it
        item->setCheckState(m_channelsChosen && before.contains(channel) ? Qt::Checked
                                                                         : Qt::Unchecked);
    }
    fitLists();
    tickUsualChannels();
    const int across = m_across->findData(QStringLiteral("rotor_rpm"));
    const int up = m_up->findData(QStringLiteral("output_w"));
    m_across->setCurrentIndex(std::max(0, across));
    m_up->setCurrentIndex(up >= 0 ? up : std::min(1, m_up->count() - 1));
    m_filling = false;
    const bool any = firstRecorded >= 0;
    m_splitter->setVisible(any);
    m_nothing->setVisible(!any);
}

/// As wide as the longest word in them: a name goes on below, a word does not.
void TraceView::fitLists()
{
    int widest = fontMetrics().averageCharWidth() * 22; // "2, on, return" and a tick
    for (const QListWidget* list : {m_runList, m_channelList}) {
        int beside = style()->pixelMetric(QStyle::PM_IndicatorWidth) + 8 * list->frameWidth() +
                     style()->pixelMetric(QStyle::PM_ScrollBarExtent);
        if (list == m_runList)
            beside += kSwatch.width();
        for (int i = 0; i < list->count(); ++i)
            for (const QString& word : list->item(i)->text().split(u' '))
                widest = std::max(widest, beside + list->fontMetrics().horizontalAdvance(word));
    }
    m_splitter->widget(0)->setMinimumWidth(std::min(widest, width() / 3));
}

/// Until somebody chooses, the first channels that the shown runs have: those of a baseline run are
/// not those of a run with a device.
void TraceView::tickUsualChannels()
{
    if (m_channelsChosen)
        return;
    std::set<QString> recorded;
    forChecked(*m_runList, [&](int row, const QListWidgetItem&) {
        for (const core::ChannelInfo& info :
             m_runs[static_cast<std::size_t>(row)].trace->channels())
            recorded.insert(QString::fromStdString(info.name));
    });
    const QSignalBlocker quiet(m_channelList);
    int shown = 0;
    for (int i = 0; i < m_channelList->count(); ++i) {
        QListWidgetItem* item = m_channelList->item(i);
        const bool wanted =
            shown < kFirstChannels && recorded.count(item->data(kNameRole).toString()) > 0;
        item->setCheckState(wanted ? Qt::Checked : Qt::Unchecked);
        shown += wanted ? 1 : 0;
    }
}

std::vector<int> TraceView::shownRuns() const
{
    std::vector<int> runs;
    forChecked(*m_runList, [&](int, const QListWidgetItem& item) {
        runs.push_back(item.data(kNameRole).toInt());
    });
    return runs;
}

QStringList TraceView::shownChannels() const
{
    QStringList channels;
    forChecked(*m_channelList, [&](int, const QListWidgetItem& item) {
        channels << item.data(kNameRole).toString();
    });
    return channels;
}

void TraceView::showRuns(const std::vector<int>& runs)
{
    m_filling = true;
    for (int i = 0; i < m_runList->count(); ++i) {
        QListWidgetItem* item = m_runList->item(i);
        const bool wanted =
            std::find(runs.begin(), runs.end(), item->data(kNameRole).toInt()) != runs.end();
        if (item->flags() & Qt::ItemIsUserCheckable)
            item->setCheckState(wanted ? Qt::Checked : Qt::Unchecked);
    }
    tickUsualChannels();
    m_filling = false;
    refresh();
    refreshScatter();
    emit shownRunsChanged();
}

double TraceView::perMetre() const
{
    constexpr double kKmPerMetre = 0.001;
    return m_units.distance == DistanceUnit::miles ? kKmPerMetre / core::kKmPerMile : kKmPerMetre;
}

void TraceView::setAxis(TraceAxis axis)
{
    if (axis != m_axis)
        m_series.clear();
    m_axis = axis;
    m_distances.clear();
    if (axis == TraceAxis::distance)
        for (const TracedRun& run : m_runs)
            m_distances.push_back(run.trace ? DistanceOfTime(*run.trace, perMetre())
                                            : DistanceOfTime());
    const QSignalBlocker quiet(m_axisBox);
    m_axisBox->setCurrentIndex(axis == TraceAxis::time ? 0 : 1);
    refresh();
    refreshScatter();
}

std::shared_ptr<const TraceSeries> TraceView::seriesOf(std::size_t run,
                                                       const std::string& channel) const
{
    const auto known = m_series.find({run, channel});
    if (known != m_series.end())
        return known->second;
    std::shared_ptr<const TraceSeries> series;
    const bool placed = m_axis == TraceAxis::time || m_distances[run].known();
    if (m_runs[run].trace && placed)
        if (auto samples = m_runs[run].trace->samples(channel); samples && samples->size() > 0)
            series = std::make_shared<TraceSeries>(std::move(samples), m_axis,
                                                   m_axis == TraceAxis::time ? DistanceOfTime()
                                                                             : m_distances[run]);
    m_series[{run, channel}] = series;
    return series;
}

double TraceView::placeOf(std::size_t run, double time_s) const
{
    return m_axis == TraceAxis::time ? time_s : m_distances[run].at(time_s);
}

/// By its place among the shown runs of its configuration: the first has none.
/// @param part  of the device: the first has none either
Qt::PenStyle TraceView::dashesOf(int row, int part) const
{
    int before = part;
    forChecked(*m_runList, [&](int other, const QListWidgetItem&) {
        if (other < row && m_runs[static_cast<std::size_t>(other)].device ==
                               m_runs[static_cast<std::size_t>(row)].device)
            ++before;
    });
    return Theme::dashes(before);
}

void TraceView::dressRuns()
{
    const QSignalBlocker quiet(m_runList);
    m_runList->setIconSize(kSwatch);
    for (int i = 0; i < m_runList->count(); ++i) {
        const TracedRun& run = m_runs[static_cast<std::size_t>(i)];
        QListWidgetItem* item = m_runList->item(i);
        item->setIcon(swatch(m_theme, run, dashesOf(i)));
        QFont font = m_runList->font(); // as in the list of runs
        font.setStrikeOut(run.discarded);
        item->setFont(font);
        if (run.discarded)
            item->setToolTip(tr("%1: discarded", "a run").arg(run.label));
    }
}

void TraceView::addLines(TraceStrip& strip, const std::string& channel, bool setPoint) const
{
    const int part = placeOfPart(QString::fromStdString(channel), m_recorded);
    forChecked(*m_runList, [&](int i, const QListWidgetItem& item) {
        const auto series = seriesOf(static_cast<std::size_t>(i), channel);
        if (!series)
            return;
        const int number = item.data(kNameRole).toInt();
        const QString name = tr("run %1").arg(m_units.number(number, 0));
        strip.lines.push_back({number, setPoint ? tr("%1, as set").arg(name) : name,
                               m_theme.series(m_runs[static_cast<std::size_t>(i)].device), setPoint,
                               dashesOf(i, part), series});
    });
}

TraceStrip TraceView::stripOf(const QString& channel) const
{
    const std::string name = channel.toStdString();
    std::string unit;
    for (const TracedRun& run : m_runs)
        if (run.trace)
            for (const core::ChannelInfo& info : run.trace->channels())
                if (info.name == name)
                    unit = info.unit;
    const ChannelShown shown = channelShown(name, unit, m_units);
    TraceStrip strip{channel, shown.label, shown.factor, {}};
    addLines(strip, name, false);
    if (const std::string set = setPointOf(name); !set.empty())
        addLines(strip, set, true);
    return strip;
}

void TraceView::addBandsAndMarks(TracePlot::Content& content)
{
    m_shownFindings.clear();
    const Language& in = m_units.language;
    const bool several = shownRuns().size() > 1;
    forChecked(*m_runList, [&](int i, const QListWidgetItem&) {
        const auto at = static_cast<std::size_t>(i);
        const TracedRun& run = m_runs[at];
        if (m_axis == TraceAxis::distance && !m_distances[at].known())
            return;
        const QString runName = tr("run %1").arg(m_units.number(run.run, 0));
        for (const core::Finding& finding : run.findings) {
            if (!finding.from_s)
                continue;
            TraceBand band;
            band.from = placeOf(at, *finding.from_s);
            band.to = placeOf(at, finding.to_s.value_or(*finding.from_s));
            band.grade = finding.grade;
            const QString name = shown(wording::ruleName(in, finding.rule));
            //: a run and a finding in it
            band.label = several ? tr("%1: %2").arg(runName, name) : name;
            band.words = tr("%1: %2").arg(
                runName, shown(wording::findingWords(in, finding, unitsOf(m_units))));
            band.key = static_cast<int>(m_shownFindings.size());
            m_shownFindings.push_back(finding);
            content.bands.push_back(band);
        }
        for (const core::Mark& mark : run.marks)
            content.marks.push_back(
                {placeOf(at, mark.at_s),
                 nameShown(mark.words.empty() ? mark.word : mark.word + " " + mark.words)});
        for (const core::RunTrace::TextMark& mark : run.trace->marks())
            content.marks.push_back({placeOf(at, mark.at_s), nameShown(mark.words)});
    });
    std::stable_sort(content.bands.begin(), content.bands.end(),
                     [](const TraceBand& a, const TraceBand& b) { return a.from < b.from; });
}

QString TraceView::sentence() const
{
    QStringList runs;
    for (const int run : shownRuns())
        runs << m_units.number(run, 0);
    return tr("Recording of run %1 with %n finding(s).", nullptr,
              static_cast<int>(m_shownFindings.size()))
        .arg(listed(m_units.language, runs));
}

void TraceView::refresh()
{
    if (m_filling)
        return;
    dressRuns();
    TracePlot::Content content;
    content.axis = m_axis;
    for (const QString& channel : shownChannels()) {
        TraceStrip strip = stripOf(channel);
        if (!strip.lines.empty())
            content.strips.push_back(std::move(strip));
    }
    addBandsAndMarks(content);
    content.title = tr("Recording");
    content.sentence = sentence();
    const bool findings = !m_shownFindings.empty();
    m_previous->setEnabled(findings);
    m_next->setEnabled(findings);
    m_plot->setLocale(m_units.locale);
    m_plot->show(std::move(content), m_units);
}

void TraceView::refreshScatter()
{
    if (m_filling || m_tabs->currentIndex() != 1)
        return;
    std::vector<TraceScatter::RunShown> runs;
    forChecked(*m_runList, [&](int i, const QListWidgetItem&) {
        runs.push_back({&m_runs[static_cast<std::size_t>(i)]});
    });
    m_scatter->setLocale(m_units.locale);
    m_scatter->show(runs, m_across->currentData().toString().toStdString(),
                    m_up->currentData().toString().toStdString(), m_units);
}

void TraceView::showFinding(const core::Finding& finding)
{
    const auto run = std::find_if(m_runs.begin(), m_runs.end(),
                                  [&](const TracedRun& r) { return r.run == finding.run; });
    if (run == m_runs.end() || !run->trace)
        return;
    m_tabs->setCurrentIndex(0);
    const std::vector<int> shown = shownRuns();
    if (std::find(shown.begin(), shown.end(), finding.run) == shown.end())
        showRuns({finding.run});
    const auto at = static_cast<std::size_t>(run - m_runs.begin());
    if (!finding.from_s || (m_axis == TraceAxis::distance && !m_distances[at].known())) {
        m_plot->showWhole();
        return;
    }
    m_plot->showStretch(placeOf(at, *finding.from_s),
                        placeOf(at, finding.to_s.value_or(*finding.from_s)));
    const auto same = std::find(m_shownFindings.begin(), m_shownFindings.end(), finding);
    m_finding =
        same == m_shownFindings.end() ? -1 : static_cast<int>(same - m_shownFindings.begin());
}

void TraceView::goToFinding(int step)
{
    const int count = static_cast<int>(m_shownFindings.size());
    if (count == 0)
        return;
    m_finding = m_finding < 0 ? (step > 0 ? 0 : count - 1) : (m_finding + step + count) % count;
    showFinding(core::Finding(m_shownFindings[static_cast<std::size_t>(m_finding)]));
}

} // namespace bothways::app
