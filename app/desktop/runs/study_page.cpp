// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/study_page.h"

#include "app/desktop/document/evidence.h"
#include "app/desktop/document/study_document.h"
#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/runs/discard_dialog.h"
#include "app/desktop/runs/run_form.h"
#include "app/desktop/runs/run_list_model.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/run_tags.h"

#include <QEvent>
#include <QFileInfo>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace bothways::app {
namespace {

std::vector<core::RunId> idsOf(const std::vector<core::Run>& runs)
{
    std::vector<core::RunId> ids;
    for (const core::Run& run : runs)
        ids.push_back(run.id);
    return ids;
}

/// What screening found in these runs and nobody answered, worst first.
std::vector<core::Rule> openRules(const StudyDocument& document, const std::vector<core::Run>& runs)
{
    std::vector<core::Finding> findings;
    if (const auto result = document.result())
        for (const core::Finding& finding : result->screening.findings)
            if (document.answerTo(finding) == Answer::none &&
                std::any_of(runs.begin(), runs.end(),
                            [&](const core::Run& run) { return run.number == finding.run; }))
                findings.push_back(finding);
    std::stable_sort(findings.begin(), findings.end(),
                     [](const auto& a, const auto& b) { return a.grade > b.grade; });
    std::vector<core::Rule> rules;
    for (const core::Finding& finding : findings)
        rules.push_back(finding.rule);
    return rules;
}

} // namespace

StudyPage::StudyPage(StudyDocument& document, Preferences& preferences, Clock clock,
                     QWidget* parent)
    : QWidget(parent),
      m_document(document),
      m_preferences(preferences),
      m_model(new RunListModel(document, preferences, this)),
      m_list(new RunListView(this)),
      m_form(new RunForm(document, preferences, std::move(clock), this))
{
    setObjectName("studyPage");
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(4);
    m_common = new QLabel(this);
    m_common->setObjectName("commonNotes");
    m_common->setWordWrap(true);
    m_common->setTextFormat(Qt::PlainText);
    m_common->setContentsMargins(6, 2, 6, 0);
    box->addWidget(m_common);
    box->addWidget(m_list, 1);
    m_form->hide();
    box->addWidget(m_form);
    m_list->setRuns(m_model);
    m_form->installEventFilter(this);
    const auto sayCommon = [this](const QString& words) {
        m_common->setText(words);
        showCommon();
    };
    sayCommon(m_model->commonWords());
    connect(m_model, &RunListModel::commonWordsChanged, this, sayCommon);
    connect(m_model, &RunListModel::refused, this, &StudyPage::problem);
    connect(m_model, &RunListModel::unconfirmed, this,
            [this](core::RunId id, const core::Consumption& typed) {
                // The cell's editor closes first, and takes the keyboard back to the list.
                QTimer::singleShot(0, m_form, [this, id, typed] {
                    if (settle())
                        m_form->askAbout(id, typed);
                });
            });
    connect(m_form, &RunForm::notConfirmed, this, &StudyPage::problem);
    connect(m_list, &RunListView::selectedRunsChanged, this, [this] {
        emit selectionChanged();
        if (const core::Run* run = m_document.run(m_list->currentRun())) {
            if (const auto ids = m_list->selectedRuns();
                !m_form->isHidden() && !m_form->isNew() && !ids.empty())
                m_form->showRuns(ids);
            emit currentRunChanged(run->number);
        }
    });
    connect(m_list, &RunListView::runActivated, this, &StudyPage::editRun);
    connect(m_form, &RunForm::closeRequested, this, &StudyPage::closeForm);
    connect(m_form, &RunForm::draftChanged, this, &StudyPage::keepDraft);
    connect(m_form, &RunForm::runSaved, this, [this](core::RunId id) {
        m_list->selectRun(id);
        if (const core::Run* run = m_document.run(id))
            emit news(tr("Run %1 saved.").arg(run->number));
    });
}

std::vector<core::Run> StudyPage::selectedRuns() const
{
    std::vector<core::Run> runs;
    for (const core::RunId id : m_list->selectedRuns())
        if (const core::Run* run = m_document.run(id))
            runs.push_back(*run);
    return runs;
}

bool StudyPage::mayChange()
{
    if (m_document.isReadOnly())
        emit problem(tr("This study is open for reading only."));
    return !m_document.isReadOnly();
}

void StudyPage::newRun()
{
    if (!mayChange())
        return;
    m_form->beginNew();
    scrollToCurrent();
}

void StudyPage::editRun()
{
    editField(RunField::consumption);
}

void StudyPage::editField(RunField field)
{
    const core::RunId id = m_list->currentRun();
    if (!mayChange() || !m_document.run(id) || !settle())
        return;
    m_form->editRun(id, field);
    if (const auto ids = m_list->selectedRuns(); ids.size() > 1) {
        m_form->showRuns(ids);
        m_form->focusField(field == RunField::consumption ? RunField::configuration : field);
    }
    scrollToCurrent();
}

void StudyPage::switchConfiguration()
{
    if (!mayChange())
        return;
    if (m_form->isHidden())
        newRun();
    m_form->switchConfiguration();
}

/// The panel takes the list's height: the row it is about stays in sight.
void StudyPage::scrollToCurrent()
{
    QTimer::singleShot(0, this, [this] { m_list->scrollTo(m_list->currentIndex()); });
}

void StudyPage::closeForm()
{
    if (!settle())
        return;
    m_form->hide();
    m_list->setFocus();
}

/// What all runs have in common; where there is little height it makes room for the entry.
void StudyPage::showCommon()
{
    const bool room = m_form->isHidden() || !parts::isOnLowScreen(*this);
    m_common->setVisible(room && !m_common->text().isEmpty());
}

bool StudyPage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_form && (event->type() == QEvent::Show || event->type() == QEvent::Hide))
        showCommon();
    return QWidget::eventFilter(watched, event);
}

bool StudyPage::settle()
{
    if (!m_form->isUnsaved())
        return true;
    QMessageBox question(QMessageBox::Question, tr("A run is being typed"),
                         tr("The new run is not saved yet."), QMessageBox::NoButton, this);
    question.setObjectName("unsavedRun");
    QPushButton* save = question.addButton(tr("Save the run"), QMessageBox::AcceptRole);
    QPushButton* drop = question.addButton(tr("Drop it"), QMessageBox::DestructiveRole);
    question.addButton(tr("Go on typing"), QMessageBox::RejectRole);
    question.setDefaultButton(save);
    question.exec();
    const QAbstractButton* answer = question.clickedButton();
    if (answer == static_cast<QAbstractButton*>(save))
        return m_form->save();
    if (answer == static_cast<QAbstractButton*>(drop)) {
        m_form->dropDraft();
        return true;
    }
    return false;
}

void StudyPage::keepDraft()
{
    if (m_form->isNew() && !m_form->isHidden())
        m_preferences.setFormDraft(m_document.path(), m_form->draft());
}

bool StudyPage::resumeDraft()
{
    return m_form->resume(m_preferences.formDraft(m_document.path()));
}

void StudyPage::discardRuns()
{
    std::vector<core::Run> runs = selectedRuns();
    if (runs.empty() || !mayChange())
        return;
    std::vector<int> numbers;
    for (const core::Run& run : runs)
        numbers.push_back(run.number);
    auto* dialog = new DiscardDialog(m_preferences.spoken(), numbers, openRules(m_document, runs),
                                     QFileInfo(m_document.path()).absolutePath(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this,
            [this, dialog, ids = idsOf(runs)] { m_document.discardRuns(ids, dialog->discard()); });
    connect(dialog, &QDialog::finished, m_list, [this] { m_list->setFocus(); });
    dialog->open();
}

void StudyPage::openEvidence()
{
    for (const core::Run& run : selectedRuns())
        if (run.discard)
            if (const auto evidence = evidenceIn(m_document, run.discard->evidence)) {
                if (const QString why = app::openEvidence(*evidence); !why.isEmpty())
                    emit problem(why);
                return;
            }
    emit problem(tr("No evidence of the chosen runs is a file. Discard a run with a photo or a "
                    "clip, and it opens here."));
}

void StudyPage::countRuns()
{
    std::vector<core::Run> runs = selectedRuns();
    std::erase_if(runs, [](const core::Run& run) { return run.counted(); });
    if (!runs.empty())
        m_document.countRuns(idsOf(runs));
}

void StudyPage::pairRuns()
{
    const std::vector<core::Run> runs = selectedRuns();
    if (runs.size() == 2)
        m_document.pairRuns(runs[0].id, runs[1].id);
    else
        emit problem(tr("Choose two runs of one block, one out and one return, to tie them."));
}

void StudyPage::unpairRuns()
{
    for (const core::Run& run : selectedRuns())
        if (const core::Run* now = m_document.run(run.id); now && !now->pair_mark.empty())
            m_document.unpairRun(run.id);
}

void StudyPage::removeRuns()
{
    const std::vector<core::Run> runs = selectedRuns();
    if (runs.empty())
        return;
    if (m_document.removeRuns(idsOf(runs)))
        emit news(tr("%n run(s) removed. Undo brings them back; a run that was driven is better "
                     "discarded with its reason.",
                     nullptr, static_cast<int>(runs.size())));
}

void StudyPage::toggleMark(std::string_view word)
{
    std::vector<core::Run> runs = selectedRuns();
    if (runs.empty())
        return;
    const bool all = std::all_of(runs.begin(), runs.end(),
                                 [&](const core::Run& run) { return hasMark(run, word); });
    for (core::Run& run : runs)
        setMark(run, word, !all);
    m_document.updateRuns(runs);
}

void StudyPage::showRun(int number)
{
    if (const core::Run* run = m_document.runByNumber(number))
        m_list->selectRun(run->id);
}

} // namespace bothways::app
