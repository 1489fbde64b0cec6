// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one form: what a key in one field does to the others.
#include "app/desktop/runs/run_form.h"

#include "app/desktop/document/study_document.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/look/shapes.h"
#include "app/desktop/look/theme.h"
#include "app/desktop/runs/questions.h"
#include "app/desktop/runs/run_tags.h"
#include "app/wording/runs.h"
#include "core/recording/trace_consumption.h"
#include "core/study/fuel.h"
#include "storage/sheet/run_sheet.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QJsonDocument>
#include <QJsonObject>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>

#include <algorithm>
#include <utility>

namespace bothways::app {
namespace {

RunField fieldOf(Question::About about)
{
    switch (about) {
    case Question::About::consumption: return RunField::consumption;
    case Question::About::start: return RunField::start;
    case Question::About::direction: return RunField::direction;
    case Question::About::distance: return RunField::distance;
    case Question::About::speed: return RunField::speed;
    case Question::About::temperature: return RunField::temperature;
    }
    return RunField::notes;
}

/// The field that a fault of storage names by its column.
RunField fieldOf(const core::Error& fault)
{
    for (const RunField field : allRunFields())
        if (fault.where.column == fieldName(field).toStdString())
            return field;
    return RunField::consumption;
}

bool typedLongAgo(const core::Instant& start, const core::Instant& now)
{
    constexpr std::int64_t kHour_us = std::int64_t{3600} * 1'000'000;
    return std::abs(now.us - start.us) > kHour_us;
}

} // namespace

RunForm::RunForm(StudyDocument& document, Preferences& preferences, Clock clock, QWidget* parent)
    : QFrame(parent), m_document(document), m_preferences(preferences), m_clock(std::move(clock))
{
    build();
    relabel();
    setMoreFields(m_preferences.moreFields());
    connect(&document, &StudyDocument::studyChanged, this, &RunForm::takeStudy);
    connect(&preferences, &Preferences::unitsChanged, this, [this] {
        relabel();
        QString fault;
        RunField where{};
        const core::Run run = collect(&fault, &where);
        if (!m_isNew || fault.isEmpty())
            fill(m_isNew ? run : m_run);
    });
}

RunForm::~RunForm() = default;

void RunForm::retitle()
{
    if (isSeveral()) {
        std::vector<int> numbers;
        for (const core::Run& run : severalRuns())
            numbers.push_back(run.number);
        const auto count = static_cast<int>(numbers.size());
        m_title->setText(
            tr("%n runs: %1", nullptr, count).arg(shown(wording::runList(std::move(numbers)))));
    } else if (!m_isNew) {
        m_title->setText(tr("Run %1").arg(m_run.number));
    } else {
        int highest = 0;
        for (const core::Run& run : m_document.study().runs)
            highest = std::max(highest, run.number);
        m_title->setText(tr("New run %1").arg(highest + 1));
    }
    m_save->setText(m_isNew ? tr("Save run") : tr("Done"));
    m_save->setToolTip(m_isNew ? tr("Save the run and prepare the next (Enter)")
                               : tr("Close the panel (Enter)"));
    m_startNow->setVisible(m_isNew);
    setAccessibleName(m_title->text());
}

void RunForm::beginNew()
{
    m_notebook = false;
    if (m_isNew && !isHidden()) { // prepared already: it starts now
        m_run.start = instantOf(m_document.study(), m_clock());
        setText(RunField::start,
                fieldText(RunField::start, m_run, m_preferences.units(m_document.isElectric())));
        review();
    } else {
        m_isNew = true;
        m_several.clear();
        fill(nextRun(m_document.study(), m_clock()));
        QFrame::show();
    }
    focusField(RunField::consumption);
}

void RunForm::showRun(core::RunId id)
{
    const core::Run* run = m_document.run(id);
    if (!run)
        return;
    m_isNew = false;
    m_several.clear();
    fill(*run);
}

void RunForm::editRun(core::RunId id, RunField first)
{
    showRun(id);
    QFrame::show();
    focusField(first);
}

void RunForm::dropDraft()
{
    if (m_isNew)
        fill(nextRun(m_document.study(), m_clock()));
}

QByteArray RunForm::draft() const
{
    if (!isUnsaved())
        return {};
    QJsonObject fields;
    for (const RunField field : allRunFields())
        if (const QString typed = text(field); !typed.isEmpty())
            fields.insert(fieldName(field), typed);
    return QJsonDocument(QJsonObject{{"unit", m_unit->currentData().toInt()}, {"fields", fields}})
        .toJson(QJsonDocument::Compact);
}

bool RunForm::resume(const QByteArray& draft)
{
    const QJsonObject kept = QJsonDocument::fromJson(draft).object();
    const QJsonObject fields = kept.value("fields").toObject();
    if (fields.isEmpty())
        return false;
    m_isNew = true;
    m_several.clear();
    fill(nextRun(m_document.study(), m_clock()));
    m_filling = true;
    if (const int unit = m_unit->findData(kept.value("unit").toInt(-1)); unit >= 0)
        m_unit->setCurrentIndex(unit);
    for (const RunField field : allRunFields()) {
        setText(field, fields.value(fieldName(field)).toString());
        line(field)->setModified(!text(field).isEmpty());
    }
    m_filling = false;
    QFrame::show();
    review();
    focusField(RunField::consumption);
    return true;
}

void RunForm::fill(const core::Run& run)
{
    leaveUnanswered();
    m_filling = true;
    m_run = run;
    m_kept.reset();
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    const core::Study& study = m_document.study();
    const auto offer = [](QWidget* editor, const QStringList& names) {
        auto* box = qobject_cast<QComboBox*>(editor);
        box->clear();
        box->addItems(names);
    };
    offer(m_editors.value(static_cast<int>(RunField::configuration)), configurationChoices(study));
    offer(m_editors.value(static_cast<int>(RunField::direction)), directionChoices(study));
    for (const RunField field : allRunFields())
        setText(field, fieldText(field, run, units));
    if (run.consumption) { // as it was given, in its own unit
        setUnit(run.consumption->unit);
        setText(RunField::consumption,
                units.number(run.consumption->value, core::shownDecimals(*run.consumption)));
    } else {
        setUnit(core::lastUnit(study.runs).value_or(m_preferences.entryUnit()));
    }
    for (QCheckBox* box : {m_traffic, m_adjusted})
        box->setTristate(false);
    m_traffic->setChecked(hasMark(run, kTrafficMark));
    m_adjusted->setChecked(hasMark(run, kAdjustedMark));
    // While consumption is hidden, a number that stands there already is not shown here either.
    const bool hidden = m_document.isBlind() && !m_isNew;
    for (const RunField field : allRunFields()) {
        m_editors.value(static_cast<int>(field))->setEnabled(true);
        line(field)->setEnabled(true);
        line(field)->setPlaceholderText({});
    }
    for (const RunField field : {RunField::consumption, RunField::control}) {
        line(field)->setEnabled(!hidden);
        if (hidden)
            line(field)->clear();
        line(field)->setPlaceholderText(hidden ? tr("hidden") : QString());
    }
    m_filling = false;
    if (isSeveral())
        fillSeveral();
    retitle();
    review();
    emit draftChanged();
}

bool RunForm::hasKeyboard(RunField field) const
{
    return line(field)->hasFocus() || m_editors.value(static_cast<int>(field))->hasFocus();
}

void RunForm::setText(RunField field, const QString& text)
{
    if (auto* box = qobject_cast<QComboBox*>(m_editors.value(static_cast<int>(field))))
        box->setCurrentText(text);
    else
        line(field)->setText(text);
    if (!hasKeyboard(field))
        line(field)->setCursorPosition(0); // of a long text the beginning is in sight
    line(field)->setModified(false);
}

QString RunForm::text(RunField field) const
{
    return line(field)->text();
}

core::ConsumptionUnit RunForm::unit() const
{
    return static_cast<core::ConsumptionUnit>(m_unit->currentData().toInt());
}

void RunForm::setUnit(core::ConsumptionUnit unit)
{
    m_unit->setCurrentIndex(m_unit->findData(static_cast<int>(unit)));
}

void RunForm::focusField(RunField field)
{
    QWidget* editor = m_editors.value(static_cast<int>(field));
    if (m_extra.contains(editor) && !m_more->isChecked())
        m_more->setChecked(true);
    editor->setFocus(Qt::ShortcutFocusReason);
    line(field)->selectAll();
}

bool RunForm::isUnsaved() const
{
    if (!m_isNew || isHidden())
        return false;
    return std::any_of(m_editors.begin(), m_editors.end(), [](QWidget* editor) {
        auto* edit = qobject_cast<QLineEdit*>(editor);
        return edit && edit->isModified() && !edit->text().isEmpty();
    });
}

core::Run RunForm::collect(QString* fault, RunField* where) const
{
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    core::Run run = m_run;
    for (const RunField field : allRunFields()) {
        const QString typed = text(field);
        const bool hidden = !line(field)->isEnabled();
        QString before = fieldText(field, m_run, units);
        if (field == RunField::consumption && m_run.consumption) {
            before =
                units.number(m_run.consumption->value, core::shownDecimals(*m_run.consumption));
            if (m_run.consumption->unit != unit())
                before.clear();
        }
        if (hidden || typed == before)
            continue; // untouched: keeps all of its digits
        const QString wrong = writeField(field, typed, units, unit(), run);
        if (!wrong.isEmpty() && fault->isEmpty()) {
            *fault = wrong;
            *where = field;
        }
    }
    return run;
}

void RunForm::setSign(RunField field, QAction** sign, const QIcon& icon, const QString& words)
{
    if (!*sign)
        *sign = line(field)->addAction(icon, QLineEdit::TrailingPosition);
    (*sign)->setIcon(icon);
    (*sign)->setToolTip(words);
    (*sign)->setText(words);
}

void RunForm::showFault(RunField field, const QString& sentence)
{
    const Theme theme = Theme::of(palette());
    setSign(field, &m_signs[static_cast<int>(field)], gradeIcon(core::Grade::spoils, theme),
            sentence);
    m_notes->setText(tr("%1: %2").arg(fieldTitle(field), sentence));
}

/// Questions about what stands in the fields, beside them and below.
void RunForm::review()
{
    if (m_filling)
        return;
    for (auto sign = m_signs.begin(); sign != m_signs.end(); ++sign)
        line(static_cast<RunField>(sign.key()))->removeAction(sign.value());
    qDeleteAll(m_signs);
    m_signs.clear();
    m_notes->clear();
    showAnswer(m_run, std::nullopt);

    if (isSeveral())
        return;
    QString fault;
    RunField where{};
    const core::Run run = collect(&fault, &where);
    if (!fault.isEmpty() && !hasKeyboard(where)) { // not while it is being typed
        showFault(where, fault);
        return;
    }
    const Theme theme = Theme::of(palette());
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    QStringList sentences;
    const bool stored = !m_isNew && run.consumption == m_run.consumption;
    const Sight shownSight = stored && m_document.isBlind() ? Sight::hidden : sight();
    for (const Question& question : questionsAbout(m_document.study(), run, units, shownSight)) {
        const RunField field = fieldOf(question.about);
        setSign(field, &m_signs[static_cast<int>(field)], gradeIcon(core::Grade::doubtful, theme),
                question.sentence);
        sentences += question.sentence;
    }
    m_notes->setText(sentences.join(u'\n'));
    showAnswer(run, unanswered(run));
}

bool RunForm::save()
{
    if (!m_isNew)
        return true;
    QString fault;
    RunField where{};
    core::Run run = collect(&fault, &where);
    if (!fault.isEmpty()) {
        showFault(where, fault);
        focusField(where);
        return false;
    }
    const auto faults = storage::faultsOf(m_document.study(), run);
    if (!faults.empty()) {
        const RunField field = fieldOf(faults.front());
        review();
        showFault(field, said(m_preferences.spoken(), faults.front().message));
        focusField(field);
        return false;
    }
    if (unanswered(run)) {
        review();
        focusField(RunField::consumption);
        return false;
    }
    const auto id = m_document.addRun(run);
    if (!id)
        return false;
    afterSaving(run, *id);
    return true;
}

/// The next run is prepared: for someone on the road it starts now, for someone with a notebook
/// where the last one ended.
void RunForm::afterSaving(const core::Run& run, core::RunId id)
{
    if (line(RunField::start)->isModified())
        m_notebook = typedLongAgo(run.start, instantOf(m_document.study(), m_clock()));
    emit runSaved(id);
    core::Run next = nextRun(m_document.study(), m_clock());
    if (m_notebook)
        next.start = nextStartFromNotebook(m_document.study());
    fill(next);
    focusField(m_notebook ? RunField::start : RunField::consumption);
}

void RunForm::enterPressed()
{
    if (m_isNew) {
        save();
        return;
    }
    if (isSeveral()) {
        for (const RunField field : allRunFields())
            commitSeveral(field);
        if (m_notes->text().isEmpty())
            emit closeRequested();
        return;
    }
    commitEdit(RunField::consumption);
    if (m_typed) // it waits for an answer
        focusField(RunField::consumption);
    else
        emit closeRequested();
}

void RunForm::commitEdit(RunField field)
{
    if (m_filling)
        return;
    if (m_isNew) {
        emit draftChanged();
        if (!hasKeyboard(field)) // Enter has said what it has to say
            review();
        return;
    }
    if (isSeveral()) {
        commitSeveral(field);
        return;
    }
    const core::Run* stored = m_document.run(m_run.id);
    if (!stored)
        return;
    m_run = *stored;
    QString fault;
    RunField where{};
    core::Run run = collect(&fault, &where);
    if (!fault.isEmpty()) {
        showFault(where, fault);
        return;
    }
    if (unanswered(run)) {
        review();
        run.consumption = stored->consumption; // until it is answered
    }
    if (run == *stored)
        return;
    const auto faults = storage::faultsOf(m_document.study(), run);
    if (!faults.empty()) {
        showFault(field, said(m_preferences.spoken(), faults.front().message));
        return;
    }
    m_document.updateRun(run);
}

void RunForm::commitMark(std::string_view word, bool there)
{
    if (m_filling)
        return;
    if (isSeveral()) {
        std::vector<core::Run> runs = severalRuns();
        for (core::Run& run : runs)
            setMark(run, word, there);
        writeSeveral(runs, RunField::marks);
        return;
    }
    core::Run run = m_run;
    setMark(run, word, there);
    if (m_isNew) {
        m_run.marks = run.marks;
        m_filling = true;
        setText(RunField::marks,
                fieldText(RunField::marks, m_run, m_preferences.units(m_document.isElectric())));
        m_filling = false;
    } else {
        m_document.updateRun(run);
    }
}

void RunForm::switchConfiguration()
{
    auto* box =
        qobject_cast<QComboBox*>(m_editors.value(static_cast<int>(RunField::configuration)));
    const QString now = box->currentText();
    for (const QString& other : configurationChoices(m_document.study()))
        if (!core::sameWord(other.toStdString(), now.toStdString())) {
            box->setCurrentText(other);
            box->lineEdit()->setModified(true);
            break;
        }
    review();
    commitEdit(RunField::configuration);
}

void RunForm::takeStudy()
{
    if (m_isNew) {
        retitle();
        return;
    }
    if (isSeveral()) {
        const std::vector<core::Run> runs = severalRuns();
        std::vector<core::RunId> ids;
        for (const core::Run& run : runs)
            ids.push_back(run.id);
        m_several.clear();
        ids.empty() ? emit closeRequested() : showRuns(ids);
        return;
    }
    const core::Run* stored = m_document.run(m_run.id);
    if (!stored)
        emit closeRequested();
    else if (*stored != m_run) {
        const auto waiting = std::exchange(m_typed, std::nullopt);
        fill(*stored);
        if (waiting) // for its answer, while another field was changed
            showTyped(*waiting);
    }
}

void RunForm::hideEvent(QHideEvent* event)
{
    QFrame::hideEvent(event);
    if (m_typed && !m_isNew)
        fill(core::Run(m_run));
}

void RunForm::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape) {
        emit closeRequested();
        event->accept();
        return;
    }
    QFrame::keyPressEvent(event);
}

void RunForm::changeEvent(QEvent* event)
{
    QFrame::changeEvent(event);
    if (event->type() == QEvent::FontChange && m_title)
        enlarge();
}

} // namespace bothways::app
