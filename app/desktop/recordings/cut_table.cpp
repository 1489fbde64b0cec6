// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/cut_table.h"

#include "app/desktop/document/run_draft.h"
#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/recorded_words.h"
#include "app/desktop/look/said.h"
#include "app/desktop/recordings/cut_material.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHeaderView>

#include <algorithm>

namespace bothways::app {
namespace {

constexpr double kLongest_s = 1e7;
constexpr int kRunRole = Qt::UserRole;               // long long: a run that is there
constexpr int kConfigurationRole = Qt::UserRole + 1; // QString: of a new one

QStringList texts(const std::vector<std::string>& names)
{
    QStringList list;
    for (const std::string& name : names)
        list += QString::fromStdString(name);
    return list;
}

/// The study's two names, the missing ones filled up.
QStringList twoNames(QStringList names, const QString& first, const QString& second)
{
    for (const QString& name : {first, second})
        if (names.size() < 2 && !names.contains(name, Qt::CaseInsensitive))
            names += name;
    return names;
}

/// Which of two configurations the plan has for a run, counted from 0; after its end the last.
int plannedConfiguration(const core::PlannedStudy& plan, int run)
{
    if (plan.sequence.empty() || plan.pairs_per_block < 1)
        return 0;
    const auto block = std::min(static_cast<std::size_t>(run / (2 * plan.pairs_per_block)),
                                plan.sequence.size() - 1);
    return plan.sequence[block] == 'B' ? 1 : 0;
}

} // namespace

CutTable::CutTable(QWidget* parent) : QTableWidget(0, columns, parent)
{
    parts::dress(*this, "cutTable", tr("Parts of the recording"));
    setHorizontalHeaderLabels(
        {tr("A run"), tr("from"), tr("to"), tr("Length"), tr("Direction"), tr("becomes")});
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(becomesColumn, QHeaderView::Stretch);
    connect(this, &QTableWidget::itemChanged, this, [this](const QTableWidgetItem* item) {
        if (!m_filling && item->column() == wantedColumn)
            emit changed();
    });
}

QDoubleSpinBox* CutTable::time(int row, int column) const
{
    return static_cast<QDoubleSpinBox*>(cellWidget(row, column));
}

QComboBox* CutTable::choice(int row, int column) const
{
    return static_cast<QComboBox*>(cellWidget(row, column));
}

void CutTable::setParts(std::vector<core::CutProposal> parts, const core::Study& study,
                        const std::vector<core::CutProposal>& byTimes, const UnitsShown& units)
{
    m_filling = true;
    m_parts = std::move(parts);
    m_units = units;
    setRowCount(0);
    setRowCount(static_cast<int>(m_parts.size()));
    const auto runs = core::runsInTime(m_parts, byTimes, study);
    for (int row = 0; row < rowCount(); ++row)
        addRow(row, study, runs[static_cast<std::size_t>(row)]);
    resizeRowsToContents();
    m_filling = false;
    emit changed();
}

void CutTable::addRow(int row, const core::Study& study, std::optional<int> run)
{
    const core::CutProposal& part = m_parts[static_cast<std::size_t>(row)];
    auto* wanted = new QTableWidgetItem(m_units.number(row + 1, 0));
    wanted->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    // An empty one is shown, with its reason in the tip, but not offered.
    wanted->setCheckState(part.to_s > part.from_s ? Qt::Checked : Qt::Unchecked);
    wanted->setToolTip(nameShown(part.words));
    setItem(row, wantedColumn, wanted);
    addTime(row, fromColumn, part.from_s)->setAccessibleName(tr("Part %1 from").arg(row + 1));
    addTime(row, toColumn, part.to_s)->setAccessibleName(tr("Part %1 to").arg(row + 1));
    setItem(row, lengthColumn, new QTableWidgetItem);
    sayLength(row);
    auto* direction = new QComboBox;
    direction->setAccessibleName(tr("Direction of part %1").arg(row + 1));
    direction->addItems(directionChoices(study));
    // Where the recording cannot tell, runs go out and back by turns.
    direction->setCurrentIndex(part.outward.value_or(row % 2 == 0) ? 0 : 1);
    setCellWidget(row, directionColumn, direction);
    addBecomes(row, study, run);
}

QDoubleSpinBox* CutTable::addTime(int row, int column, double value_s)
{
    auto* box = new QDoubleSpinBox;
    box->setRange(-kLongest_s, kLongest_s);
    box->setDecimals(1);
    box->setSingleStep(1.0);
    box->setSuffix(tr(" s"));
    box->setLocale(m_units.locale);
    box->setValue(value_s);
    setCellWidget(row, column, box);
    connect(box, &QDoubleSpinBox::valueChanged, this, [this, row] {
        sayLength(row);
        if (!m_filling)
            emit changed();
    });
    return box;
}

void CutTable::addBecomes(int row, const core::Study& study, std::optional<int> run)
{
    auto* box = new QComboBox;
    box->setAccessibleName(tr("What becomes of part %1").arg(row + 1));
    for (const QString& configuration :
         twoNames(texts(core::configurations(study)), QStringLiteral("A"), QStringLiteral("B"))) {
        box->addItem(tr("a new run, %1").arg(configuration));
        box->setItemData(box->count() - 1, configuration, kConfigurationRole);
    }
    for (const core::Run& one : study.runs) {
        //: number, configuration, direction of a run
        box->addItem(tr("run %1: %2, %3")
                         .arg(one.number)
                         .arg(nameShown(one.configuration), nameShown(one.direction)));
        box->setItemData(box->count() - 1, static_cast<long long>(one.id), kRunRole);
        if (run == one.number)
            box->setCurrentIndex(box->count() - 1);
    }
    if (!run && study.runs.empty() && study.properties.plan)
        box->setCurrentIndex(plannedConfiguration(*study.properties.plan, row));
    setCellWidget(row, becomesColumn, box);
    box->setToolTip(tr("The new runs below follow, up to one that was chosen itself: a block is "
                       "chosen with its first run"));
    connect(box, &QComboBox::activated, this, [this, row] { chooseFrom(row); });
    QComboBox* direction = choice(row, directionColumn);
    const auto follow = [box, direction] {
        direction->setEnabled(!box->currentData(kRunRole).isValid()); // a run has its own
    };
    follow();
    connect(box, &QComboBox::currentIndexChanged, direction, follow);
}

/// A configuration is driven in blocks: the lines below take it too, as far as nobody chose there.
void CutTable::chooseFrom(int row)
{
    constexpr const char* kChosen = "chosen";
    const QComboBox* box = choice(row, becomesColumn);
    choice(row, becomesColumn)->setProperty(kChosen, true);
    if (!box->currentData(kConfigurationRole).isValid())
        return;
    for (int below = row + 1; below < rowCount(); ++below) {
        QComboBox* other = choice(below, becomesColumn);
        if (other->property(kChosen).toBool())
            break; // the next block was chosen already
        if (!other->currentData(kRunRole).isValid())
            other->setCurrentIndex(box->currentIndex());
    }
}

void CutTable::sayLength(int row)
{
    if (item(row, lengthColumn) && time(row, toColumn))
        item(row, lengthColumn)
            ->setText(lengthText(time(row, toColumn)->value() - time(row, fromColumn)->value()));
}

void CutTable::setTimes(int row, double from_s, double to_s)
{
    m_filling = true;
    time(row, fromColumn)->setValue(from_s);
    time(row, toColumn)->setValue(to_s);
    m_filling = false;
}

std::vector<CutTable::Part> CutTable::wantedParts() const
{
    std::vector<Part> parts;
    for (int row = 0; row < rowCount(); ++row) {
        if (item(row, wantedColumn)->checkState() != Qt::Checked)
            continue;
        Part part;
        part.proposal = m_parts[static_cast<std::size_t>(row)];
        const double from_s = time(row, fromColumn)->value(), to_s = time(row, toColumn)->value();
        const auto moved = [](double shown, double exact) {
            return shown != QString::number(exact, 'f', 1).toDouble();
        };
        if (moved(from_s, part.proposal.from_s) || moved(to_s, part.proposal.to_s)) {
            part.proposal.from_s = from_s;
            part.proposal.to_s = to_s;
            part.proposal.distance_km.reset(); // it was that of the part as proposed
            part.moved = true;
        }
        part.direction = choice(row, directionColumn)->currentText();
        const QComboBox* becomes = choice(row, becomesColumn);
        part.configuration = becomes->currentData(kConfigurationRole).toString();
        if (const QVariant run = becomes->currentData(kRunRole); run.isValid())
            part.existing = core::RunId{run.toLongLong()};
        parts.push_back(std::move(part));
    }
    return parts;
}

std::optional<core::CutProposal> CutTable::chosenPart() const
{
    const int row = currentRow();
    if (row < 0)
        return std::nullopt;
    core::CutProposal part = m_parts[static_cast<std::size_t>(row)];
    part.from_s = time(row, fromColumn)->value();
    part.to_s = time(row, toColumn)->value();
    return part;
}

std::vector<CutBand> CutTable::bands() const
{
    std::vector<CutBand> bands;
    for (int row = 0; row < rowCount(); ++row)
        bands.push_back({time(row, fromColumn)->value(), time(row, toColumn)->value(),
                         m_units.number(row + 1, 0),
                         item(row, wantedColumn)->checkState() == Qt::Checked});
    return bands;
}

} // namespace bothways::app
