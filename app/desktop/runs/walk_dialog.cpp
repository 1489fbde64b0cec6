// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/walk_dialog.h"

#include "app/desktop/document/study_document.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/wording/runs.h"
#include "core/study/properties.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace bothways::app {
namespace {

/// A line each, to be edited.
QString asLines(const QString& list)
{
    QStringList lines;
    for (const QString& line : list.split(u';', Qt::SkipEmptyParts))
        lines += line.trimmed();
    return lines.join(u'\n');
}

/// The last number that was noted for the line.
std::optional<double> lastNumber(const std::vector<core::WalkRound>& made,
                                 const core::WalkLine& line)
{
    for (auto round = made.rbegin(); round != made.rend(); ++round)
        for (const core::WalkTick& tick : round->ticks)
            if (core::sameWord(tick.words, line.words) && tick.unit == line.unit && tick.number)
                return tick.number;
    return std::nullopt;
}

} // namespace

WalkDialog::WalkDialog(StudyDocument& document, Preferences& preferences, Clock clock,
                       QWidget* parent)
    : QDialog(parent),
      m_document(document),
      m_preferences(preferences),
      m_clock(std::move(clock)),
      m_stack(new QStackedWidget(this)),
      m_problem(new QLabel(this)),
      m_buttons(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this))
{
    setObjectName("walkDialog");
    setWindowTitle(tr("Walk-round"));
    m_stack->addWidget(m_round = buildRound());
    m_stack->addWidget(m_listPage = buildList());
    m_problem->setObjectName("walkProblem");
    m_problem->setWordWrap(true);
    m_problem->hide();
    m_change = m_buttons->addButton(tr("Change the &list…"), QDialogButtonBox::ActionRole);
    m_change->setObjectName("walkChangeList");
    m_buttons->button(QDialogButtonBox::Ok)->setObjectName("walkOk");
    auto* box = new QVBoxLayout(this);
    box->addWidget(m_stack, 1);
    box->addWidget(m_problem);
    box->addWidget(m_buttons);
    connect(m_buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(m_buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_change, &QPushButton::clicked, this, &WalkDialog::showList);
    takeList();
    resize(fontMetrics().averageCharWidth() * 75, fontMetrics().height() * 22);
}

QWidget* WalkDialog::buildRound()
{
    auto* page = new QWidget(this);
    auto* box = new QVBoxLayout(page);
    box->setContentsMargins(0, 0, 0, 0);
    m_which = new QLabel(page);
    m_which->setWordWrap(true);
    auto* scroll = new QScrollArea(page);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    m_rowsHolder = new QWidget(scroll);
    scroll->setWidget(m_rowsHolder);
    box->addWidget(m_which);
    box->addWidget(scroll, 1);
    return page;
}

QWidget* WalkDialog::buildList()
{
    auto* page = new QWidget(this);
    auto* box = new QVBoxLayout(page);
    box->setContentsMargins(0, 0, 0, 0);
    auto* help = new QLabel(tr("What is looked at while the car stands, before each block: one "
                               "thing a line. A line that asks for a number has its unit behind "
                               "it, and how far two numbers may be apart: “tyre pressure = kPa +- "
                               "10”."),
                            page);
    help->setWordWrap(true);
    m_list = new QPlainTextEdit(page);
    m_list->setObjectName("walkList");
    m_list->setAccessibleName(tr("Lines of the walk-round"));
    m_list->setTabChangesFocus(true);
    box->addWidget(help);
    box->addWidget(m_list, 1);
    return page;
}

/// The study's list, as rows to be ticked; without one, the list is what comes first.
void WalkDialog::takeList()
{
    m_lines = m_document.walkLines();
    m_rows.clear();
    delete m_rowsHolder->layout();
    for (QWidget* old : m_rowsHolder->findChildren<QWidget*>(Qt::FindDirectChildrenOnly))
        delete old;
    if (m_lines.empty()) {
        showList();
        return;
    }
    auto* grid = new QGridLayout(m_rowsHolder);
    grid->setContentsMargins(0, 0, 0, 0);
    for (const core::WalkLine& line : m_lines)
        addRow(*grid, line);
    grid->setRowStretch(static_cast<int>(m_lines.size()), 1);
    grid->setColumnStretch(0, 1);
    m_which->setText(tr("Before run %1. Tick what is in order; what is left open is kept as open. "
                        "The numbers go into the run.")
                         .arg(nextNumber(m_document.study())));
    m_buttons->button(QDialogButtonBox::Ok)->setText(tr("&Note it"));
    m_change->show();
    m_stack->setCurrentWidget(m_round);
    m_rows.front().tick->setFocus();
    follow();
}

void WalkDialog::addRow(QGridLayout& grid, const core::WalkLine& line)
{
    const int place = static_cast<int>(m_rows.size());
    const QString words = nameShown(line.words);
    Row row;
    row.tick = new QCheckBox(QString(words).replace(u'&', "&&"), m_rowsHolder);
    row.tick->setObjectName(QString("walkTick%1").arg(place + 1));
    grid.addWidget(row.tick, place, 0);
    if (!line.unit.empty()) {
        const UnitsShown units = m_preferences.units();
        row.number = new QLineEdit(m_rowsHolder);
        row.number->setObjectName(QString("walkNumber%1").arg(place + 1));
        row.number->setAccessibleName(tr("%1, in %2").arg(words, nameShown(line.unit)));
        row.number->setMaximumWidth(fontMetrics().averageCharWidth() * 14);
        const auto before = lastNumber(m_document.walkRounds(), line);
        QStringList about;
        if (before)
            about += tr("%1 before").arg(units.fieldText(*before));
        if (line.tolerance)
            about += tr("± %1 allowed").arg(units.fieldText(*line.tolerance));
        grid.addWidget(row.number, place, 1);
        grid.addWidget(new QLabel(nameShown(line.unit), m_rowsHolder), place, 2);
        grid.addWidget(new QLabel(about.join("; "), m_rowsHolder), place, 3);
        connect(row.number, &QLineEdit::textChanged, this, [this, tick = row.tick](const auto& t) {
            if (!t.trimmed().isEmpty())
                tick->setChecked(true); // who read it has looked at it
            follow();
        });
    }
    m_rows.push_back(row);
}

void WalkDialog::showList()
{
    QString list = QString::fromStdString(m_document.study().properties.walk_round);
    if (list.isEmpty())
        list = m_preferences.walkRound();
    //: parted by ";": a first list of what is looked at before a block
    const QString first = tr("no loose nut; belts on; no wire hangs; accessories as in every run; "
                             "tyre pressure = kPa +- 10");
    m_list->setPlainText(asLines(list.isEmpty() ? first : list));
    m_buttons->button(QDialogButtonBox::Ok)->setText(tr("&Use this list"));
    m_change->hide();
    m_problem->hide();
    m_stack->setCurrentWidget(m_listPage);
    m_list->setFocus();
}

core::WalkRound WalkDialog::round() const
{
    const core::Study& study = m_document.study();
    core::WalkRound made =
        core::blankRound(m_lines, instantOf(study, m_clock()), nextNumber(study));
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        made.ticks[i].ticked = m_rows[i].tick->isChecked();
        if (!m_rows[i].number)
            continue;
        if (const auto typed = UnitsShown::parseNumber(m_rows[i].number->text()))
            made.ticks[i].number = typed->value;
    }
    return made;
}

int WalkDialog::wrongNumber() const
{
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        if (m_rows[i].number && !m_rows[i].number->text().trimmed().isEmpty() &&
            !UnitsShown::parseNumber(m_rows[i].number->text()))
            return static_cast<int>(i);
    return -1;
}

void WalkDialog::follow()
{
    QStringList said;
    const int wrong = wrongNumber();
    if (wrong >= 0)
        said += tr("%1: expected a number.")
                    .arg(nameShown(m_lines[static_cast<std::size_t>(wrong)].words));
    said += m_document.walkDifferences(m_preferences.spoken(), round());
    m_problem->setText(said.join(u'\n'));
    m_problem->setVisible(!said.isEmpty());
    m_buttons->button(QDialogButtonBox::Ok)->setEnabled(wrong < 0 && !m_document.isReadOnly());
}

bool WalkDialog::acceptList()
{
    core::StudyProperties properties = m_document.study().properties;
    const std::string list =
        m_list->toPlainText().replace(u'\n', u';').toStdString(); // as the command line has it
    core::Outcome set = core::setProperty(properties, "walk_round", list);
    if (set && properties.walk_round == m_document.study().properties.walk_round)
        return true;
    if (!set) {
        m_problem->setText(sentenceOf(m_preferences.spoken(), set.error()));
        m_problem->show();
        return false;
    }
    if (!m_document.setProperties(properties))
        return false;
    m_preferences.setWalkRound(QString::fromStdString(properties.walk_round));
    return true;
}

void WalkDialog::accept()
{
    if (m_stack->currentWidget() == m_listPage) {
        if (!acceptList())
            return;
        if (m_document.study().properties.walk_round.empty())
            QDialog::accept(); // there is nothing to walk round for
        else
            takeList();
        return;
    }
    if (wrongNumber() >= 0)
        return;
    const core::WalkRound made = round();
    const Language in = m_preferences.spoken();
    QStringList said{asSentence(shown(wording::walkRoundMade(in, made)))};
    said += m_document.walkDifferences(in, made);
    if (!m_document.noteWalkRound(made))
        return;
    emit noted(said.join(u' '));
    QDialog::accept();
}

} // namespace bothways::app
