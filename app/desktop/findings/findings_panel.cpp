// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/findings/findings_panel.h"

#include "app/desktop/document/study_document.h"
#include "app/desktop/findings/findings_model.h"
#include "app/desktop/findings/grade_delegate.h"
#include "app/desktop/findings/not_checked_dialog.h"
#include "app/desktop/look/help_topics.h"
#include "app/desktop/look/hinted_table_view.h"
#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/look/words.h"
#include "app/wording/runs.h"

#include <QCheckBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QStyleOptionToolButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <set>

namespace bothways::app {
namespace {

/// A button that shows as much of its words as it has room for.
class ElidedButton final : public QToolButton {
public:
    using QToolButton::QToolButton;

protected:
    void initStyleOption(QStyleOptionToolButton* option) const override
    {
        constexpr int kFrame = 10;
        QToolButton::initStyleOption(option);
        option->text = fontMetrics().elidedText(text(), Qt::ElideRight, width() - kFrame);
    }
};

} // namespace

FindingsPanel::FindingsPanel(StudyDocument& document, Preferences& preferences, QWidget* parent)
    : QWidget(parent),
      m_document(document),
      m_preferences(preferences),
      m_model(new FindingsModel(document, preferences, this))
{
    build();
    connect(&document, &StudyDocument::analysisChanged, this, &FindingsPanel::takeResult);
    connect(&document, &StudyDocument::studyChanged, this, [this] {
        sayBelow();
        fitColumns();
        follow();
    });
    connect(&document, &StudyDocument::blindChanged, this, &FindingsPanel::sayBelow);
    connect(m_view->selectionModel(), &QItemSelectionModel::selectionChanged, this, [this] {
        follow();
        const QModelIndex current = m_view->currentIndex();
        if (!m_showing && current.isValid()) {
            const core::Finding finding = m_model->findingAt(current.row());
            emit runWanted(finding.run);
            emit findingWanted(finding);
        }
    });
    connect(m_view, &QAbstractItemView::activated, this, [this](const QModelIndex& index) {
        emit findingActivated(core::Finding(m_model->findingAt(index.row())));
    });
    takeResult();
}

void FindingsPanel::build()
{
    setObjectName("findingsPanel");
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(4, 4, 4, 4);
    box->setSpacing(4);
    m_view = new HintedTableView(this);
    m_view->setObjectName("findingsList");
    m_view->setAccessibleName(tr("Findings of the screening"));
    m_view->setModel(m_model);
    m_view->setHint(tr("Nothing was found."));
    m_view->horizontalHeader()->setSectionResizeMode(FindingsModel::runColumn,
                                                     QHeaderView::ResizeToContents);
    m_view->setWordWrap(true);
    m_view->setItemDelegateForColumn(FindingsModel::gradeColumn, new GradeDelegate(m_view));
    m_view->horizontalHeader()->setSectionResizeMode(FindingsModel::gradeColumn,
                                                     QHeaderView::Fixed);
    m_view->horizontalHeader()->setSectionResizeMode(FindingsModel::findingColumn,
                                                     QHeaderView::Stretch);
    m_view->horizontalHeader()->setSectionResizeMode(FindingsModel::answerColumn,
                                                     QHeaderView::Fixed);
    m_view->horizontalHeader()->setMaximumSectionSize(600);
    // Queued: a scroll bar that comes with the higher rows makes the column narrower meanwhile.
    connect(
        m_view->horizontalHeader(), &QHeaderView::sectionResized, m_view,
        [this] { m_view->resizeRowsToContents(); }, Qt::QueuedConnection);
    if (parts::isOnLowScreen(*this))
        m_view->setMinimumHeight(m_view->horizontalHeader()->sizeHint().height() +
                                 m_view->verticalHeader()->defaultSectionSize());
    box->addWidget(m_view, 1);

    box->addLayout(buildAnswers());
    m_view->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(m_view, &QWidget::customContextMenuRequested, this, &FindingsPanel::showMenu);

    m_pattern = new QLabel(this);
    m_pattern->setObjectName("pattern");
    m_pattern->setWordWrap(true);
    box->addWidget(m_pattern);
    connect(m_accept, &QPushButton::clicked, this, &FindingsPanel::accept);
    connect(m_overrule, &QPushButton::clicked, this, &FindingsPanel::overrule);
    connect(m_words, &QLineEdit::returnPressed, this, &FindingsPanel::overrule);
    connect(m_words, &QLineEdit::textChanged, this, &FindingsPanel::follow);
}

QLayout* FindingsPanel::buildAnswers()
{
    auto* answers = new QVBoxLayout;
    auto* first = new QHBoxLayout;
    auto* second = new QHBoxLayout;
    answers->addLayout(first);
    answers->addLayout(second);
    m_accept = new QPushButton(tr("Accept: discard the run"), this);
    m_accept->setObjectName("acceptFinding");
    m_words = new QLineEdit(this);
    m_words->setObjectName("overruleWords");
    m_words->setPlaceholderText(tr("Why the run counts all the same"));
    m_words->setAccessibleName(tr("Why the run counts all the same"));
    m_overrule = new QPushButton(tr("Overrule"), this);
    m_overrule->setObjectName("overruleFinding");
    m_allOfRule = new QCheckBox(tr("All of this rule"), this);
    m_allOfRule->setObjectName("allOfRule");
    first->addWidget(m_accept);
    first->addWidget(m_words, 1);
    first->addWidget(m_overrule);
    second->addWidget(m_allOfRule);
    m_evidence = new QPushButton(this);
    m_evidence->setObjectName("openFindingEvidence");
    m_evidence->hide();
    connect(m_evidence, &QPushButton::clicked, this, &FindingsPanel::openEvidence);
    second->addWidget(m_evidence);
    m_notChecked = new ElidedButton(this);
    m_notChecked->setObjectName("notChecked");
    m_notChecked->setAutoRaise(true);
    m_notChecked->setMinimumWidth(1);
    m_notChecked->setToolTip(tr("Which rule said nothing about which run, and why. Not checked is "
                                "not the same as passed."));
    second->addWidget(m_notChecked, 1, Qt::AlignLeft);
    connect(m_notChecked, &QToolButton::clicked, this, [this] {
        auto* dialog = new NotCheckedDialog(m_document.result()->screening.not_checked,
                                            m_preferences.units(), this);
        dialog->show();
    });
    m_help = helpButton({}, tr("the rule of this finding"));
    second->addWidget(m_help);
    return answers;
}

/// What was found is what is read: it has the width that the others leave, and as many lines as it
/// needs. The answers have a quarter at most, and where there is little the grade is its sign.
void FindingsPanel::fitColumns()
{
    QHeaderView* header = m_view->horizontalHeader();
    const int width = m_view->viewport()->width();
    const int readable = fontMetrics().averageCharWidth() * 90;
    if (width < readable)
        header->resizeSection(FindingsModel::gradeColumn,
                              header->sectionSizeHint(FindingsModel::gradeColumn));
    else
        m_view->resizeColumnToContents(FindingsModel::gradeColumn);
    constexpr int kAir = 24;
    int wanted = header->sectionSizeHint(FindingsModel::answerColumn);
    for (int row = 0; row < m_model->rowCount(); ++row)
        wanted = std::max(wanted,
                          m_view->fontMetrics().horizontalAdvance(
                              m_model->index(row, FindingsModel::answerColumn).data().toString()) +
                              kAir);
    header->resizeSection(FindingsModel::answerColumn, std::min(wanted, width / 4));
    m_view->verticalHeader()->setMinimumSectionSize(m_view->verticalHeader()->defaultSectionSize());
    m_view->resizeRowsToContents();
}

void FindingsPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitColumns();
}

void FindingsPanel::takeResult()
{
    const auto result = m_document.result();
    sayBelow();
    fitColumns();
    m_notChecked->setVisible(result && !result->screening.not_checked.empty());
    if (!result)
        return;
    std::set<core::Rule> rules;
    for (const core::NotChecked& missing : result->screening.not_checked)
        rules.insert(missing.rule);
    const QString words =
        tr("%n rule(s) not checked on every run…", nullptr, static_cast<int>(rules.size()));
    m_notChecked->setText(words);
    fitColumns();
    follow();
}

/// What is no finding about one run: a pattern of all of them, and what is odd all the same.
void FindingsPanel::sayBelow()
{
    const auto result = m_document.result();
    const bool any = !m_document.study().runs.empty();
    m_view->setHint(any ? tr("Nothing was found.") : tr("There are no runs to look at yet."));
    QStringList sentences;
    const Language in = m_preferences.spoken();
    if (result && result->screening.pattern)
        sentences += shown(wording::patternSentence(in, *result->screening.pattern));
    if (result)
        for (const core::OverspeedPattern& pattern : result->screening.part_patterns)
            sentences += shown(wording::patternSentence(in, pattern));
    if (result)
        for (const core::OddRun& odd : result->odd)
            if (!m_document.isBlind() || odd.what != core::OddRun::What::consumption)
                sentences +=
                    asSentence(shown(wording::oddRunSentence(in, odd, m_document.study())));
    m_pattern->setText(sentences.join(u'\n'));
    m_pattern->setVisible(!sentences.isEmpty());
}

void FindingsPanel::follow()
{
    const std::vector<core::Finding> findings = chosen();
    const auto hasCounted = [&](const core::Finding& finding) {
        const core::Run* run = m_document.runByNumber(finding.run);
        return run && run->counted();
    };
    const bool may = !m_document.isReadOnly();
    m_accept->setEnabled(may && std::any_of(findings.begin(), findings.end(), hasCounted));
    m_words->setEnabled(may && !findings.empty());
    m_overrule->setEnabled(may && !findings.empty() && !m_words->text().trimmed().isEmpty());
    m_allOfRule->setEnabled(may && m_view->selectionModel()->hasSelection());
    const QString whyNot = tr("This study is open for reading only.");
    m_accept->setToolTip(may ? tr("Discard the run, with the finding as the reason") : whyNot);
    m_overrule->setToolTip(may ? tr("The run counts all the same; your words are kept") : whyNot);
    m_words->setToolTip(may ? QString() : whyNot);
    m_allOfRule->setToolTip(may ? tr("Answer every open finding of the same rule at once")
                                : whyNot);
    followEvidence();
    const QModelIndex current = m_view->currentIndex();
    const QString topic =
        current.isValid() ? helpTopic(m_model->findingAt(current.row()).rule) : QString();
    setHelpTopic(*this, topic);
    setHelpTopic(*m_help, topic);
}

/// Of the discard, whatever its reason, or of the overruling.
std::optional<ShownEvidence> FindingsPanel::evidence() const
{
    const QModelIndex current = m_view->currentIndex();
    if (!current.isValid())
        return std::nullopt;
    const core::Finding& finding = m_model->findingAt(current.row());
    const core::Run* run = m_document.runByNumber(finding.run);
    if (run && run->discard)
        return evidenceIn(m_document, run->discard->evidence);
    for (const storage::Overruled& overruled : m_document.overruled())
        if (overruled.run == finding.run && overruled.rule == core::ruleName(finding.rule))
            return evidenceIn(m_document, overruled.words);
    return std::nullopt;
}

void FindingsPanel::followEvidence()
{
    const auto shown = evidence();
    m_evidence->setVisible(shown.has_value());
    if (!shown)
        return;
    using State = ShownEvidence::State;
    m_evidence->setEnabled(shown->state != State::missing);
    m_evidence->setText(shown->state == State::missing ? tr("Missing: %1").arg(shown->name)
                        : shown->state == State::changed
                            ? tr("Open %1 (it was changed)").arg(shown->name)
                            : tr("Open %1").arg(shown->name));
    m_evidence->setToolTip(shown->file);
}

void FindingsPanel::openEvidence()
{
    const auto shown = evidence();
    if (!shown)
        return;
    if (const QString why = app::openEvidence(*shown); !why.isEmpty())
        m_evidence->setToolTip(why);
    followEvidence(); // it may have gone meanwhile
}

void FindingsPanel::showMenu(const QPoint& at)
{
    const QModelIndex index = m_view->indexAt(at);
    if (!index.isValid())
        return;
    QMenu menu(this);
    menu.setObjectName("findingMenu");
    const core::Rule rule = m_model->findingAt(index.row()).rule;
    menu.addAction(tr("What the rule looks at: %1")
                       .arg(shown(wording::ruleName(m_preferences.spoken(), rule))),
                   m_help, &QToolButton::click);
    menu.exec(m_view->viewport()->mapToGlobal(at));
}

std::vector<core::Finding> FindingsPanel::chosen() const
{
    std::vector<core::Finding> findings;
    std::set<core::Rule> rules;
    for (const QModelIndex& index : m_view->selectionModel()->selectedRows()) {
        findings.push_back(m_model->findingAt(index.row()));
        rules.insert(findings.back().rule);
    }
    if (!m_allOfRule->isChecked())
        return findings;
    findings.clear();
    for (int row = 0; row < m_model->rowCount(); ++row) {
        const core::Finding& finding = m_model->findingAt(row);
        if (rules.count(finding.rule) > 0 && m_document.answerTo(finding) == Answer::none)
            findings.push_back(finding);
    }
    return findings;
}

void FindingsPanel::accept()
{
    if (m_document.acceptFindings(chosen()))
        showNextOpen();
}

void FindingsPanel::overrule()
{
    const QString words = m_words->text().trimmed();
    const std::vector<core::Finding> findings = chosen();
    if (words.isEmpty() || findings.empty())
        return;
    if (m_document.overruleFindings(findings, words)) {
        m_words->clear();
        showNextOpen();
    }
}

void FindingsPanel::showRun(int number)
{
    const int row = m_model->rowOfRun(number);
    if (row < 0 || (m_view->currentIndex().isValid() &&
                    m_model->findingAt(m_view->currentIndex().row()).run == number))
        return;
    m_showing = true;
    m_view->selectRow(row);
    m_showing = false;
}

void FindingsPanel::showFinding(const core::Finding& finding)
{
    for (int row = 0; row < m_model->rowCount(); ++row)
        if (m_model->findingAt(row) == finding) {
            m_showing = true;
            m_view->selectRow(row);
            m_view->scrollTo(m_model->index(row, 0));
            m_showing = false;
            return;
        }
}

bool FindingsPanel::showNextOpen()
{
    const int row = m_model->nextOpen(m_view->currentIndex().row());
    if (row < 0)
        return false;
    m_view->selectRow(row);
    m_view->scrollTo(m_model->index(row, 0));
    return true;
}

} // namespace bothways::app
