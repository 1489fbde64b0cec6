// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_form.h"

#include "app/desktop/document/study_document.h"
#include "app/desktop/look/access_keys.h"
#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/runs/field_grid.h"
#include "app/desktop/runs/form_area.h"
#include "app/desktop/runs/run_tags.h"
#include "app/wording/findings.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCompleter>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace bothways::app {
namespace {

constexpr core::ConsumptionUnit kEntryUnits[] = {
    core::ConsumptionUnit::lPer100km,   core::ConsumptionUnit::mpgUs,
    core::ConsumptionUnit::mpgImp,      core::ConsumptionUnit::kmPerL,
    core::ConsumptionUnit::fuelL,       core::ConsumptionUnit::fuelGalUs,
    core::ConsumptionUnit::kwhPer100km,
};

bool isChoice(RunField field)
{
    return field == RunField::configuration || field == RunField::direction;
}

} // namespace

/// Rows in driving order, and so is the Tab key: before, on the road, at the end. Where there is
/// little height these scroll; what is asked, the notes and the buttons stay in sight.
void RunForm::build()
{
    setObjectName("runForm");
    setFrameShape(QFrame::StyledPanel);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(10, 6, 10, 8);
    box->setSpacing(2);
    m_fields = new QWidget(this);
    m_grid = new FieldGrid(m_fields);
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(12);
    m_grid->setVerticalSpacing(2);
    buildBefore();
    buildOnTheRoad();
    buildAtTheEnd();
    auto* below = buildBelow();
    buildAnswer();
    box->addLayout(buildTop());
    box->addWidget(new FormArea(m_fields, this), 1);
    box->addLayout(below);
    enlarge();
}

QLayout* RunForm::buildTop()
{
    m_title = new QLabel(this);
    m_title->setObjectName("runFormTitle");
    m_notes = new QLabel(this);
    m_notes->setObjectName("runFormNotes");
    m_notes->setWordWrap(true);
    m_notes->setTextFormat(Qt::PlainText);
    auto* top = new QGridLayout;
    top->setHorizontalSpacing(24);
    top->setVerticalSpacing(0);
    top->setColumnStretch(1, 1);
    top->addWidget(m_title, 0, 0, Qt::AlignTop);
    top->addWidget(m_notes, 0, 1);
    top->addWidget(m_answer, 1, 0, 1, 2);
    return top;
}

void RunForm::buildBefore()
{
    beginSection(tr("Before"));
    m_startNow = new QPushButton(tr("Now"), m_fields);
    m_startNow->setObjectName("startNow");
    m_startNow->setAccessibleName(tr("The run starts now"));
    m_startNow->setToolTip(tr("The run starts now (Ctrl+N)"));
    m_startNow->setFocusPolicy(Qt::NoFocus);
    addField(RunField::start, false, 1, m_startNow);
    addField(RunField::configuration, false);
    addField(RunField::setting, false);
    addField(RunField::direction, false);
    addField(RunField::batteryStart, true);
    addField(RunField::number, true);
}

void RunForm::buildOnTheRoad()
{
    beginSection(tr("On the road"));
    addField(RunField::temperature, false);
    addField(RunField::wind, false);
    addField(RunField::accessories, false);
    buildMarks();
    addField(RunField::windFrom, true);
    addField(RunField::pressure, true);
    addField(RunField::humidity, true);
    addField(RunField::accessoryLoad, true);
    addField(RunField::accessoryOn, true, 2);
    addField(RunField::marks, true, 2);
}

void RunForm::buildAtTheEnd()
{
    beginSection(tr("At the end"));
    m_unit = new QComboBox(m_fields);
    m_unit->setObjectName("consumptionUnit");
    m_unit->setAccessibleName(tr("Unit of the consumption"));
    const UnitsShown units = m_preferences.units();
    for (const core::ConsumptionUnit unit : kEntryUnits)
        m_unit->addItem(units.unitText(unit), static_cast<int>(unit));
    m_unit->setFocusPolicy(Qt::ClickFocus); // chosen once, not on the way from field to field
    addField(RunField::consumption, false, 2, m_unit);
    addField(RunField::distance, false);
    addField(RunField::duration, false);
    addField(RunField::speed, true);
    addField(RunField::control, true);
    addField(RunField::output, true);
    addField(RunField::rotor, true);
    addField(RunField::batteryEnd, true);
}

void RunForm::beginSection(const QString& title)
{
    auto* heading = new QLabel(title, m_fields);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    m_grid->beginSection(heading);
}

/// The consumption is what is typed in the cold: it is large.
void RunForm::enlarge()
{
    QFont title = font();
    title.setPointSizeF(title.pointSizeF() * 1.25);
    title.setBold(true);
    m_title->setFont(title);
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.4);
    large.setBold(true);
    QLineEdit* edit = line(RunField::consumption);
    edit->setFont(large);
    edit->setMinimumWidth(QFontMetrics(large).horizontalAdvance("00.000") + 36);
    m_startNow->setMaximumWidth(fontMetrics().horizontalAdvance(m_startNow->text()) + 24);
    line(RunField::start)->setMinimumWidth(fontMetrics().horizontalAdvance("00:00:00") + 34);
}

QLayout* RunForm::buildBelow()
{
    const auto [label, notes] = makeField(RunField::notes, this);
    m_more = new QToolButton(this);
    m_more->setObjectName("moreFields");
    m_more->setCheckable(true);
    m_more->setText(tr("More fields"));
    m_more->setChecked(m_preferences.moreFields());
    auto* close = new QPushButton(tr("Close"), this);
    close->setObjectName("closeRunForm");
    close->setToolTip(tr("Close the panel (Esc)"));
    m_save = new QPushButton(tr("Save run"), this);
    m_save->setObjectName("saveRun");
    m_save->setToolTip(tr("Save the run and prepare the next (Enter)"));
    m_save->setAutoDefault(true);
    auto* row = new QGridLayout;
    row->setVerticalSpacing(2);
    row->setColumnStretch(0, 1);
    row->addWidget(label, 0, 0);
    row->addWidget(notes, 1, 0);
    for (QWidget* button : {static_cast<QWidget*>(m_more), static_cast<QWidget*>(close),
                            static_cast<QWidget*>(m_save)})
        row->addWidget(button, 1, row->columnCount());
    connect(m_more, &QToolButton::toggled, this, &RunForm::setMoreFields);
    connect(close, &QPushButton::clicked, this, &RunForm::closeRequested);
    connect(m_save, &QPushButton::clicked, this, &RunForm::enterPressed);
    connect(m_startNow, &QPushButton::clicked, this, &RunForm::beginNew);
    connect(m_unit, &QComboBox::activated, this, [this] {
        m_preferences.setEntryUnit(unit());
        m_isNew ? review() : commitEdit(RunField::consumption);
    });
    return row;
}

QWidget* RunForm::makeEditor(RunField field, QWidget* parent)
{
    if (isChoice(field)) {
        auto* box = new QComboBox(parent);
        box->setEditable(true);
        box->setInsertPolicy(QComboBox::NoInsert);
        box->lineEdit()->setObjectName(fieldName(field) + "_text");
        return box;
    }
    return new QLineEdit(parent);
}

RunForm::Field RunForm::makeField(RunField field, QWidget* parent)
{
    const int key = static_cast<int>(field);
    QWidget* editor = makeEditor(field, parent);
    editor->setObjectName(fieldName(field));
    editor->setToolTip(fieldHelp(field));
    editor->setMinimumWidth(fontMetrics().averageCharWidth() * 8);
    auto* label = new QLabel(parent);
    label->setBuddy(editor);
    m_editors[key] = editor;
    m_labels[key] = label;
    QLineEdit* edit = line(field);
    connect(edit, &QLineEdit::textEdited, this, &RunForm::review);
    connect(edit, &QLineEdit::editingFinished, this, [this, field] { commitEdit(field); });
    connect(edit, &QLineEdit::returnPressed, this, &RunForm::enterPressed);
    if (auto* box = qobject_cast<QComboBox*>(editor))
        connect(box, &QComboBox::activated, this, [this, field] {
            line(field)->setModified(true);
            review();
            commitEdit(field);
        });
    return {label, editor};
}

void RunForm::addField(RunField field, bool extra, int span, QWidget* beside)
{
    const auto [label, editor] = makeField(field, m_fields);
    QWidget* placed = editor;
    if (beside) {
        placed = new QWidget(m_fields);
        auto* box = new QHBoxLayout(placed);
        box->setContentsMargins(0, 0, 0, 0);
        box->setSpacing(4);
        box->addWidget(editor, 1);
        box->addWidget(beside);
    }
    m_grid->addField(label, placed, span);
    if (extra)
        m_extra << label << editor;
}

void RunForm::buildMarks()
{
    const auto markLabel = [this](std::string_view mark) {
        return shown(wording::markName(m_preferences.spoken(), mark));
    };
    m_traffic = new QCheckBox(markLabel(kTrafficMark), m_fields);
    m_traffic->setObjectName("passingTraffic");
    m_adjusted = new QCheckBox(markLabel(kAdjustedMark), m_fields);
    m_adjusted->setObjectName("adjusted");
    m_adjusted->setToolTip(tr("Something was adjusted during the run"));
    m_grid->addField(m_traffic, m_adjusted, 1);
    connect(m_traffic, &QCheckBox::clicked, this,
            [this](bool there) { commitMark(kTrafficMark, there); });
    connect(m_adjusted, &QCheckBox::clicked, this,
            [this](bool there) { commitMark(kAdjustedMark, there); });
}

void RunForm::relabel()
{
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    QSet<QChar> taken = menuKeysAround(*this);
    for (const auto* key : m_answer->findChildren<QShortcut*>())
        taken.insert(key->key().toString(QKeySequence::PortableText).back().toLower());
    // What is typed most has the first choice of a letter.
    std::vector<RunField> fields{RunField::consumption, RunField::configuration,
                                 RunField::direction, RunField::start, RunField::notes};
    for (const RunField field : allRunFields())
        if (std::ranges::find(fields, field) == fields.end())
            fields.push_back(field);
    for (const RunField field : fields) {
        auto* label = qobject_cast<QLabel*>(m_labels.value(static_cast<int>(field)));
        if (!label)
            continue;
        // The unit of consumption is chosen beside its field.
        const QString itsUnit =
            field == RunField::consumption ? QString() : fieldUnit(field, units);
        const QString title =
            itsUnit.isEmpty() ? fieldTitle(field) : tr("%1, %2").arg(fieldTitle(field), itsUnit);
        // What is not in sight leaves the letters to what is.
        label->setText(label->isHidden() ? title : withAccessKey(title, taken));
        parts::nameField(*m_editors.value(static_cast<int>(field)), title);
    }
    for (QAbstractButton* button :
         std::initializer_list<QAbstractButton*>{m_traffic, m_adjusted, m_more})
        button->setText(withAccessKey(button->text().remove(u'&'), taken));
}

void RunForm::setMoreFields(bool more)
{
    m_preferences.setMoreFields(more);
    for (QWidget* widget : m_extra)
        widget->setVisible(more);
    relabel(); // those that came want keys, those that went need none
}

QLineEdit* RunForm::line(RunField field) const
{
    QWidget* editor = m_editors.value(static_cast<int>(field));
    if (auto* box = qobject_cast<QComboBox*>(editor))
        return box->lineEdit();
    return qobject_cast<QLineEdit*>(editor);
}

} // namespace bothways::app
