// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one action of a person after another, each a few lines.
#include "app/desktop/document/study_document_private.h"

#include "app/answer/looks.h"
#include "app/desktop/document/paths.h"
#include "app/desktop/look/said.h"
#include "core/screening/screening.h"
#include "core/study/fuel.h"
#include "core/study/rule.h"

#include <QFileInfo>

#include <algorithm>
#include <chrono>

namespace bothways::app {
namespace {

constexpr int kOptionsSettle_ms = 700;

/// While another program has the study, the window stands still: not longer than one bears. What
/// was typed stays, and is saved by the next try.
void waitShortly()
{
    storage::StudyFile::setWaiting({}, std::chrono::milliseconds(800));
}

/// Into the options of an answer, or the properties of a study.
template <class Target>
void putInto(Target& target, const TriedOptions& tried)
{
    target.margin_pct = tried.margin_pct;
    target.confidence = tried.confidence;
    target.claim_pct = tried.claim_pct;
}

/// Whether it was done, whatever came of it.
template <class T>
core::Outcome done(const core::Result<T>& result)
{
    return result ? core::Outcome(core::Done{}) : core::Outcome(result.error());
}

} // namespace

StudyDocument::Opened StudyDocument::create(const QString& file,
                                            const core::StudyProperties& properties)
{
    waitShortly();
    auto made = storage::StudyFile::create(toPath(file), properties);
    if (!made)
        return made.error();
    std::unique_ptr<StudyDocument> document(new StudyDocument(std::move(made).take()));
    if (const core::Outcome read = document->reload(); !read)
        return read.error();
    document->recompute();
    return document;
}

StudyDocument::Opened StudyDocument::open(const QString& file)
{
    waitShortly();
    auto opened = storage::StudyFile::open(toPath(file));
    if (!opened)
        return opened.error();
    std::unique_ptr<StudyDocument> document(new StudyDocument(std::move(opened).take()));
    auto recovered = storage::sayRecovered(document->d->file);
    if (!recovered)
        return recovered.error();
    document->d->recovered = std::move(recovered).take();
    if (const core::Outcome read = document->reload(); !read)
        return read.error();
    document->recompute();
    return document;
}

StudyDocument::Opened StudyDocument::openForReading(const QString& file)
{
    auto opened = storage::StudyFile::open(toPath(file), true);
    if (!opened)
        return opened.error();
    std::unique_ptr<StudyDocument> document(new StudyDocument(std::move(opened).take()));
    document->d->readOnly = true;
    if (const core::Outcome read = document->reload(); !read)
        return read.error();
    document->recompute();
    return document;
}

StudyDocument::StudyDocument(storage::StudyFile file)
    : d(std::make_unique<Private>(std::move(file)))
{
    d->settle.setSingleShot(true);
    d->settle.setInterval(kOptionsSettle_ms);
    connect(&d->settle, &QTimer::timeout, this, &StudyDocument::settleOptions);
    d->recomputer = std::make_unique<Recomputer>([this] { return d->question(options()); });
    connect(this, &StudyDocument::failed, this, [this](const core::Error& why) { d->why = why; });
    connect(d->recomputer.get(), &Recomputer::failed, this, &StudyDocument::failed);
    connect(d->recomputer.get(), &Recomputer::busyChanged, this, &StudyDocument::busyChanged);
    connect(d->recomputer.get(), &Recomputer::progressed, this, &StudyDocument::progressed);
    connect(d->recomputer.get(), &Recomputer::answered, this, &StudyDocument::analysisChanged);
}

StudyDocument::~StudyDocument()
{
    d->recomputer->disconnect(this);
    settleOptions();
    d->recomputer.reset();
}

const core::Study& StudyDocument::study() const
{
    return d->study;
}

const core::Run* StudyDocument::run(core::RunId id) const
{
    const auto found = std::find_if(d->study.runs.begin(), d->study.runs.end(),
                                    [&](const core::Run& run) { return run.id == id; });
    return found == d->study.runs.end() ? nullptr : &*found;
}

const core::Run* StudyDocument::runByNumber(int number) const
{
    const auto found = std::find_if(d->study.runs.begin(), d->study.runs.end(),
                                    [&](const core::Run& run) { return run.number == number; });
    return found == d->study.runs.end() ? nullptr : &*found;
}

QString StudyDocument::path() const
{
    return fromPath(d->file.path());
}

bool StudyDocument::isReadOnly() const
{
    return d->readOnly;
}

QString StudyDocument::name() const
{
    if (!d->study.properties.name.empty())
        return nameShown(d->study.properties.name);
    return QFileInfo(path()).completeBaseName();
}

bool StudyDocument::isElectric() const
{
    return core::isElectric(d->study);
}

core::AnalysisOptions StudyDocument::options() const
{
    core::AnalysisOptions options = core::AnalysisOptions::of(d->study.properties);
    if (d->tried)
        putInto(options, *d->tried);
    return options;
}

std::shared_ptr<const ResultSet> StudyDocument::result() const
{
    return d->recomputer->result();
}

bool StudyDocument::isResultCurrent() const
{
    return result() && d->recomputer->revision() == d->revision;
}

bool StudyDocument::isBusy() const
{
    return d->recomputer->isBusy();
}

const std::vector<storage::Overruled>& StudyDocument::overruled() const
{
    return d->overruled;
}

Answer StudyDocument::answerTo(const core::Finding& finding) const
{
    const std::string_view rule = core::ruleName(finding.rule);
    const core::Run* run = runByNumber(finding.run);
    if (run && run->discard && run->discard->reason == rule)
        return Answer::accepted;
    for (const storage::Overruled& overruled : d->overruled)
        if (overruled.run == finding.run && overruled.rule == rule)
            return Answer::overruled;
    return Answer::none;
}

QString StudyDocument::answerWords(const core::Finding& finding) const
{
    const Answer answer = answerTo(finding);
    if (answer == Answer::accepted)
        return nameShown(runByNumber(finding.run)->discard->evidence);
    QString words;
    if (answer == Answer::overruled)
        for (const storage::Overruled& overruled : d->overruled)
            if (overruled.run == finding.run && overruled.rule == core::ruleName(finding.rule))
                words = nameShown(overruled.words);
    return words;
}

std::vector<storage::HistoryEntry> StudyDocument::history() const
{
    return d->history;
}

std::optional<storage::HistoryEntry> StudyDocument::undoable() const
{
    return d->file.nextUndo();
}

std::optional<storage::HistoryEntry> StudyDocument::redoable() const
{
    return d->file.nextRedo();
}

bool StudyDocument::isBlind() const
{
    return d->blind;
}

core::Outcome StudyDocument::reload()
{
    auto study = d->file.study();
    if (!study)
        return study.error();
    auto overruled = d->file.overruled();
    if (!overruled)
        return overruled.error();
    auto history = d->file.history();
    if (!history)
        return history.error();
    auto recordings = storage::recordings(d->file);
    if (!recordings)
        return recordings.error();
    auto assigned = storage::assignedTraces(d->file);
    if (!assigned)
        return assigned.error();
    d->recordings = std::move(recordings).take();
    d->assigned = std::move(assigned).take();
    ++d->revision;
    d->study = std::move(study).take();
    d->overruled = std::move(overruled).take();
    d->history = std::move(history).take();
    d->blind = false;
    for (const storage::HistoryEntry& entry : d->history)
        if (entry.kind == "blind")
            d->blind = entry.detail == "on";
    return core::Done{};
}

bool StudyDocument::finish(const core::Outcome& outcome)
{
    const core::Outcome read = reload();
    if (!read)
        emit failed(read.error());
    if (!outcome)
        emit failed(outcome.error());
    if (!outcome || !read)
        return false;
    d->looked = false;
    recompute();
    emit studyChanged();
    return true;
}

bool StudyDocument::change(const std::function<core::Outcome()>& job)
{
    settleOptions();
    return finish(job());
}

std::optional<core::RunId> StudyDocument::addRun(const core::Run& run)
{
    settleOptions();
    const auto added = d->file.addRun(withWalkRound(run));
    if (!finish(done(added)))
        return std::nullopt;
    return added.value();
}

bool StudyDocument::updateRun(const core::Run& run)
{
    return change([&] { return d->file.updateRun(run); });
}

bool StudyDocument::updateRuns(const std::vector<core::Run>& runs)
{
    return change([&] { return d->file.updateRuns(runs); });
}

bool StudyDocument::removeRuns(const std::vector<core::RunId>& runs)
{
    return change([&] { return d->file.removeRuns(runs); });
}

bool StudyDocument::discardRuns(const std::vector<core::RunId>& runs, const core::Discard& why)
{
    return change([&] { return d->file.discard(runs, why); });
}

bool StudyDocument::countRuns(const std::vector<core::RunId>& runs)
{
    return change([&] { return d->file.count(runs); });
}

bool StudyDocument::pairRuns(core::RunId one, core::RunId other)
{
    return change([&] { return d->file.pair(one, other); });
}

bool StudyDocument::unpairRun(core::RunId run)
{
    return change([&] { return d->file.unpair(run); });
}

bool StudyDocument::setProperties(const core::StudyProperties& properties)
{
    d->tried.reset();
    d->settle.stop();
    return finish(d->file.setProperties(properties, {}));
}

bool StudyDocument::rename(const std::vector<storage::Renaming>& renamings)
{
    return change([&] { return storage::rename(d->file, renamings); });
}

bool StudyDocument::importRuns(const core::Study& sheet, const QString& sourceName)
{
    return change([&] { return d->file.importRuns(sheet, sourceName.toStdString()); });
}

bool StudyDocument::acceptFindings(const std::vector<core::Finding>& findings)
{
    settleOptions();
    // The evidence is worded where the command line's is: by applyScreening(), on a copy that
    // holds these findings alone.
    core::Screening accepted;
    accepted.findings = findings;
    for (core::Finding& finding : accepted.findings)
        finding.grade = core::Grade::spoils;
    core::Study copy = d->study;
    std::vector<std::pair<core::RunId, core::Discard>> discards;
    for (const int number : core::applyScreening(copy, accepted))
        for (const core::Run& run : copy.runs)
            if (run.number == number)
                discards.emplace_back(run.id, *run.discard);
    return finish(d->file.discardEach(discards));
}

bool StudyDocument::overruleFindings(const std::vector<core::Finding>& findings,
                                     const QString& words)
{
    settleOptions();
    std::vector<storage::Overruled> answers;
    for (const core::Finding& finding : findings)
        answers.push_back(
            {finding.run, std::string(core::ruleName(finding.rule)), words.toStdString()});
    return finish(d->file.overrule(answers));
}

bool StudyDocument::undo()
{
    return change([&] { return done(d->file.undo()); });
}

bool StudyDocument::redo()
{
    return change([&] { return done(d->file.redo()); });
}

core::Outcome StudyDocument::outcomeOf(const std::function<bool()>& order)
{
    d->why.reset();
    if (order())
        return core::Done{};
    return d->why.value_or(
        core::Error{core::ErrorCode::studyFile, "the study cannot be written"_t, {}});
}

bool StudyDocument::setBlind(bool blind)
{
    if (blind == d->blind)
        return true;
    if (!finish(d->file.note("blind", blind ? "on" : "off")))
        return false;
    emit blindChanged(blind);
    return true;
}

void StudyDocument::recordLook()
{
    if (d->looked || d->blind || d->readOnly || isBusy() || !result())
        return;
    d->looked = true;
    const core::Analysis& analysis = result()->analysis;
    if (!isLookForTheRecord(d->study.properties, analysis, pairsLookedAt(d->history)))
        return;
    const core::Outcome noted = d->file.note("look", lookDetail(analysis, d->study.properties));
    if (!noted)
        emit failed(noted.error());
    else if (auto history = d->file.history())
        d->history = std::move(history).take();
}

bool StudyDocument::wasLookedAt() const
{
    return !pairsLookedAt(d->history).empty();
}

void StudyDocument::tryOptions(const TriedOptions& options)
{
    d->tried = options;
    if (!d->readOnly)
        d->settle.start();
    recompute();
}

void StudyDocument::settleOptions()
{
    d->settle.stop();
    if (!d->tried || d->readOnly)
        return;
    core::StudyProperties properties = d->study.properties;
    putInto(properties, *d->tried);
    d->tried.reset();
    if (properties != d->study.properties)
        setProperties(properties);
}

void StudyDocument::stopComputing()
{
    d->recomputer->stop();
}

void StudyDocument::recompute()
{
    d->recomputer->begin();
}

} // namespace bothways::app
