// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/recordings_panel.h"

#include "app/desktop/document/study_document.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/recorded_words.h"
#include "app/desktop/look/said.h"
#include "app/desktop/recordings/live_line.h"
#include "app/desktop/recordings/trace_loader.h"
#include "app/desktop/recordings/trace_view.h"
#include "storage/recordings/recordings.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace bothways::app {

RecordingsPanel::RecordingsPanel(StudyDocument& document, Preferences& preferences, QWidget* parent)
    : QWidget(parent),
      m_document(document),
      m_preferences(preferences),
      m_loader(new TraceLoader(this)),
      m_view(new TraceView(this))
{
    build();
    connect(&document, &StudyDocument::studyChanged, this, &RecordingsPanel::takeStudy);
    connect(&document, &StudyDocument::blindChanged, this, &RecordingsPanel::takeStudy);
    connect(&document, &StudyDocument::analysisChanged, this, [this] {
        if (m_opened)
            fill();
    });
    connect(&preferences, &Preferences::unitsChanged, this, &RecordingsPanel::dress);
    connect(m_loader, &TraceLoader::opened, this, [this] {
        fill();
        if (m_finding)
            showFinding(*m_finding);
        else if (m_run > 0)
            showRun(m_run);
    });
    connect(m_loader, &TraceLoader::failed, &m_document, &StudyDocument::failed);
    connect(m_loader, &TraceLoader::loaded, this, [this] {
        m_view->takeSamples();
        if (m_finding && !m_loader->isLoading()) // places by distance are known only now
            showFinding(*m_finding);
    });
    connect(m_view, &TraceView::runActivated, this, &RecordingsPanel::runActivated);
    connect(m_view, &TraceView::findingActivated, this, &RecordingsPanel::findingActivated);
    connect(m_view, &TraceView::shownRunsChanged, this, &RecordingsPanel::say);
    dress();
}

RecordingsPanel::~RecordingsPanel() = default;

void RecordingsPanel::build()
{
    setObjectName("recordingsPanel");
    m_words = new QLabel(this);
    m_words->setObjectName("recordedConsumption");
    m_words->setWordWrap(true);
    auto* import = new QPushButton(tr("Import a recording…"), this);
    import->setObjectName("importRecordingButton");
    import->setEnabled(!m_document.isReadOnly());
    if (m_document.isReadOnly())
        import->setToolTip(tr("This study is open for reading only."));
    m_list = new QPushButton(tr("All recordings…"), this);
    m_list->setObjectName("listRecordingsButton");
    m_list->setToolTip(tr("Cut a recording into runs, drop one, or shrink the study file"));
    auto* tools = new QHBoxLayout;
    tools->setContentsMargins(10, 4, 10, 0);
    tools->addWidget(m_words, 1);
    tools->addWidget(import);
    tools->addWidget(m_list);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(0);
    box->addLayout(tools);
    box->addWidget(m_view, 1);
    connect(import, &QPushButton::clicked, this, &RecordingsPanel::importWanted);
    connect(m_list, &QPushButton::clicked, this, &RecordingsPanel::listWanted);
}

bool RecordingsPanel::isLoading() const
{
    return m_loader->isLoading();
}

std::vector<RecordingsPanel::Part> RecordingsPanel::parts() const
{
    std::vector<Part> parts;
    for (const storage::RunTraceInfo& assigned : m_document.assignedTraces())
        if (const core::Run* run = m_document.run(assigned.run))
            parts.push_back(
                {assigned.run, assigned.recording, assigned.offset_s, core::duration_s(*run)});
    return parts;
}

void RecordingsPanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (!m_opened)
        takeStudy();
}

void RecordingsPanel::takeStudy()
{
    if (!isVisible() && !m_opened)
        return;
    m_list->setEnabled(!m_document.recordings().empty());
    m_loader->setBlind(m_document.isBlind());
    std::vector<Part> wanted = parts();
    if (m_opened && wanted == m_parts) {
        fill();
        return;
    }
    m_opened = true;
    m_parts = std::move(wanted);
    std::vector<core::Run> runs;
    for (const Part& part : m_parts)
        runs.push_back(*m_document.run(part.run));
    auto connection = runs.empty() ? nullptr : m_document.anotherConnection();
    m_loader->open(std::move(connection), std::move(runs));
}

/// The runs that have a recording, with what was found in them.
void RecordingsPanel::fill()
{
    const core::Study& study = m_document.study();
    const std::string baseline = core::baselineName(study);
    const auto result = m_document.result();
    std::vector<TracedRun> runs;
    for (const core::Run& run : study.runs) {
        auto trace = m_loader->trace(run.id);
        if (!trace)
            continue;
        TracedRun traced;
        traced.run = run.number;
        //: a run in a list: number, configuration, direction
        traced.label = tr("%1, %2, %3")
                           .arg(run.number)
                           .arg(nameShown(run.configuration), nameShown(run.direction));
        traced.device = !core::sameWord(run.configuration, baseline);
        traced.discarded = !run.counted();
        traced.duration_s = core::duration_s(run);
        traced.trace = std::move(trace);
        traced.marks = run.marks;
        if (result)
            for (const core::Finding& finding : result->screening.findings)
                if (finding.run == run.number)
                    traced.findings.push_back(finding);
        runs.push_back(std::move(traced));
    }
    m_view->setRuns(std::move(runs));
    say();
}

void RecordingsPanel::dress()
{
    m_view->setTheme(Theme::of(palette()));
    m_view->setUnits(m_preferences.units(m_document.isElectric()));
    say();
}

void RecordingsPanel::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange)
        dress();
    QWidget::changeEvent(event);
}

QString RecordingsPanel::consumptionWords() const
{
    const auto result = m_document.result();
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    QStringList lines;
    for (const int number : m_view->shownRuns()) {
        const core::Run* run = m_document.runByNumber(number);
        if (!run || !result)
            continue;
        if (const auto recorded = result->recorded.find(number); recorded != result->recorded.end())
            lines +=
                tr("Run %1: %2").arg(number).arg(recordedBeside(*run, recorded->second, units));
    }
    return lines.join(u'\n');
}

/// Of the runs on show: how their recordings were made, each said once.
QString RecordingsPanel::liveWords() const
{
    const std::vector<int> shown = m_view->shownRuns();
    QStringList lines;
    for (const Part& part : m_parts) {
        const core::Run* run = m_document.run(part.run);
        if (!run || std::find(shown.begin(), shown.end(), run->number) == shown.end())
            continue;
        const QString line = liveLine(m_preferences.spoken(), m_document, part.recording);
        if (!line.isEmpty() && !lines.contains(line))
            lines += line;
    }
    return lines.join(u'\n');
}

void RecordingsPanel::say()
{
    QString words;
    const bool recorded = std::any_of(m_parts.begin(), m_parts.end(), [&](const Part& part) {
        const core::Run* run = m_document.run(part.run);
        return run && run->number == m_run;
    });
    if (m_run > 0 && !m_parts.empty() && !recorded)
        words = tr("Run %1 has no recording; another run is shown.").arg(m_run);
    else if (!m_document.isBlind())
        words = consumptionWords();
    else if (!m_parts.empty())
        words = tr("Channels that tell the consumption are hidden with it.");
    if (const QString live = liveWords(); !live.isEmpty())
        words += (words.isEmpty() ? QString() : QString(u'\n')) + live;
    // No line ends within a unit.
    m_words->setText(words.replace(u'/', QStringLiteral("/\u2060")));
}

void RecordingsPanel::showRun(int number)
{
    m_run = number;
    m_finding.reset();
    const std::vector<int> shown = m_view->shownRuns();
    const core::Run* run = m_document.runByNumber(number);
    if (run && m_loader->trace(run->id) &&
        std::find(shown.begin(), shown.end(), number) == shown.end()) {
        m_view->showRuns({number});
        m_view->plot().showWhole();
    }
    say();
}

void RecordingsPanel::showFinding(const core::Finding& finding)
{
    m_run = finding.run;
    const core::Run* run = m_document.runByNumber(finding.run);
    m_view->showFinding(finding);
    m_finding = finding;
    if (run && m_loader->trace(run->id) && !m_loader->isLoading())
        m_finding.reset();
    say();
}

} // namespace bothways::app
