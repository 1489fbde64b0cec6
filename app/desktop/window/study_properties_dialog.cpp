// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one dialog of four pages that check each other.
#include "app/desktop/window/study_properties_dialog.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/said.h"
#include "app/desktop/look/words.h"
#include "core/study/limits.h"
#include "core/study/parts.h"
#include "core/study/properties.h"
#include "core/study/rule.h"
#include "storage/sheet/run_columns.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace bothways::app {
namespace {

constexpr const char* kFuelNames[] = {"petrol", "e10", "diesel", "electric"};

/// A typed number in the form of properties; what is no number goes through as it is, so that the
/// refusal can quote it.
std::string plain(const QString& text)
{
    const auto typed = UnitsShown::parseNumber(text);
    return typed ? storage::formatNumber(typed->value) : text.trimmed().toStdString();
}

QString text(const std::string& s)
{
    return QString::fromStdString(s);
}

/// "0.9,21" of properties; "0,9; 21" where the comma is the decimal sign.
QString numbersText(const std::string& numbers, const UnitsShown& units)
{
    if (units.locale.decimalPoint() != QStringLiteral(","))
        return text(numbers);
    return text(numbers).replace(u',', QStringLiteral("; ")).replace(u'.', u',');
}

/// The other way: semicolons part numbers with either decimal sign.
std::string plainNumbers(const QString& typed)
{
    std::string numbers;
    if (!typed.contains(u';'))
        return typed.trimmed().toStdString();
    for (const QString& number : typed.split(u';'))
        numbers += (numbers.empty() ? "" : ",") + plain(number);
    return numbers;
}

/// What a limit means, without its rule.
QString limitWords(std::string_view name)
{
    const std::string_view parameter = name.substr(name.find('.') + 1);
    if (parameter == "declared_w")
        return StudyPropertiesDialog::tr("declared load");
    if (parameter == "watts")
        return StudyPropertiesDialog::tr("change that counts");
    if (parameter == "rpm")
        return StudyPropertiesDialog::tr("highest speed permitted");
    if (parameter == "seconds")
        return name == "trace_ends_early.seconds"
                   ? StudyPropertiesDialog::tr("missing time that counts")
                   : StudyPropertiesDialog::tr("for at least");
    if (parameter == "tolerance")
        return StudyPropertiesDialog::tr("tolerance");
    if (parameter == "ms2")
        return StudyPropertiesDialog::tr("highest level permitted");
    if (parameter == "mean_pct")
        return StudyPropertiesDialog::tr("mean of the run off target by");
    if (name == "interrupted.pct")
        return StudyPropertiesDialog::tr("slower than this share of the target");
    if (name == "output_drop.pct")
        return StudyPropertiesDialog::tr("fall that counts");
    if (parameter == "pct")
        return StudyPropertiesDialog::tr("off by more than");
    if (parameter == "sigmas")
        return StudyPropertiesDialog::tr("departure, robust sigmas");
    if (parameter == "volts")
        return StudyPropertiesDialog::tr("difference that counts");
    if (parameter == "minutes")
        return StudyPropertiesDialog::tr("within");
    return QString::fromUtf8(parameter.data(), static_cast<qsizetype>(parameter.size()));
}

QTableWidgetItem* fixedItem(const QString& words)
{
    auto* item = new QTableWidgetItem(words);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    return item;
}

QTableWidget* makeTable(const QString& objectName, const QString& accessibleName,
                        const QStringList& headers, QWidget* parent)
{
    auto* table = new QTableWidget(0, static_cast<int>(headers.size()), parent);
    parts::dress(*table, objectName, accessibleName);
    parts::setLowRows(*table);
    table->setHorizontalHeaderLabels(headers);
    table->setWordWrap(false);
    table->setSelectionBehavior(QAbstractItemView::SelectItems);
    table->setEditTriggers(QAbstractItemView::AllEditTriggers);
    return table;
}

} // namespace

StudyPropertiesDialog::StudyPropertiesDialog(const core::Study& study, const UnitsShown& units,
                                             Apply apply, QWidget* parent)
    : QDialog(parent),
      m_study(study),
      m_units(units),
      m_apply(std::move(apply)),
      m_texts(core::propertiesAsText(study.properties)),
      m_pages(new QTabWidget(this)),
      m_fault(new QLabel(this))
{
    setObjectName("studyProperties");
    setWindowTitle(tr("Study properties"));
    m_pages->addTab(makeStudyPage(), tr("Study"));
    m_pages->addTab(makeStretchPage(), tr("Stretch and vehicle"));
    m_pages->addTab(makeLimitsPage(), tr("Limits"));
    m_pages->addTab(makeAccessoriesPage(), tr("Timed accessories"));
    m_pages->addTab(makePlanPage(), tr("Plan"));
    m_fault->setObjectName("propertiesFault");
    m_fault->setWordWrap(true);
    m_fault->hide();
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    connect(buttons, &QDialogButtonBox::accepted, this, &StudyPropertiesDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* box = new QVBoxLayout(this);
    box->addWidget(m_pages);
    box->addWidget(m_fault);
    box->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 115, fontMetrics().height() * 30);
}

std::string StudyPropertiesDialog::baseText(const std::string& property) const
{
    const auto found = std::find_if(m_texts.begin(), m_texts.end(),
                                    [&](const auto& pair) { return pair.first == property; });
    return found != m_texts.end() ? found->second : std::string();
}

void StudyPropertiesDialog::addField(QFormLayout& form, const QString& label,
                                     const std::string& property, Kind kind, const QString& help)
{
    auto* editor = new QLineEdit(this);
    editor->setObjectName(text(property));
    editor->setAccessibleName(label);
    editor->setToolTip(help);
    const std::string now = baseText(property);
    const double stored = QLocale::c().toDouble(text(now));
    QString shown = text(now);
    const bool miles = m_units.distance == DistanceUnit::miles;
    if (kind == Kind::date)
        shown = m_units.dateText(now);
    else if (kind == Kind::numbers)
        shown = numbersText(now, m_units);
    else if (!now.empty() && kind != Kind::text)
        shown = m_units.fieldText(
            kind != Kind::number && miles ? stored / core::kKmPerMile : stored, 4);
    editor->setText(shown);
    form.addRow(label, editor);
    m_fields.push_back({property, kind, editor, stored, shown});
}

QWidget* StudyPropertiesDialog::makeStudyPage()
{
    auto* page = new QWidget(this);
    page->setObjectName("studyPage");
    auto* form = new QFormLayout(page);
    addField(*form, tr("Name"), "name", Kind::text, tr("What the study is called"));
    addField(*form, tr("Date"), "date", Kind::date,
             tr("For runs given by time of day: 2026-05-09"));
    addField(*form, tr("Baseline configuration"), "baseline", Kind::text,
             tr("Name of the configuration without the device; empty: A, else that of the first "
                "run"));
    addField(*form, tr("Margin, %"), "margin", Kind::number,
             tr("The smallest effect that you would care about"));
    addField(*form, tr("Confidence"), "confidence", Kind::number, tr("Above 0.5 and below 1"));
    addField(*form, tr("Claim, %"), "claim", Kind::number,
             tr("What someone says that the device does; negative: less. Empty: nobody does"));
    addField(*form, tr("Widest gap in a pair, min"), "max_gap", Kind::number,
             tr("An out and a return run further apart than this are no pair"));
    m_fields[1].editor->setPlaceholderText(tr("like 2026-05-09"));
    m_fields[3].editor->setPlaceholderText("1");
    m_fields[4].editor->setPlaceholderText(m_units.number(0.95, 2));
    m_fields[5].editor->setPlaceholderText(tr("none", "no claim"));
    m_fields[6].editor->setPlaceholderText("30");
    addField(*form, tr("Known noise of a pair"), "noise", Kind::numbers,
             tr("From earlier days with this vehicle: per cent and degrees of freedom, 0.9,21"));
    m_fields.back().editor->setPlaceholderText(tr("like 0.9,21"));
    addField(*form, tr("Known from"), "noise.from", Kind::text, tr("Whence that noise is known"));
    m_notes = new QPlainTextEdit(text(m_study.properties.notes), this);
    m_notes->setObjectName("notes");
    m_notes->setAccessibleName(tr("Notes"));
    m_notes->setTabChangesFocus(true);
    form->addRow(tr("Notes"), m_notes);
    return page;
}

QWidget* StudyPropertiesDialog::makeStretchPage()
{
    auto* page = new QWidget(this);
    page->setObjectName("stretchPage");
    auto* form = new QFormLayout(page);
    addField(*form, tr("Length of the stretch, %1").arg(m_units.distanceUnit()), "stretch.km",
             Kind::km, tr("Runs whose distance is off by more than 2 % are found doubtful"));
    addField(*form, tr("Bearing of the out direction, °"), "bearing_deg", Kind::number,
             tr("0 north, 90 east; for the wind's part in the air check"));
    addField(*form, tr("Target speed, %1").arg(m_units.speedUnit()), "road_speed.target_kmh",
             Kind::kmh, tr("Cruise speed that was to be held"));
    addField(*form, tr("Cold start"), "cold_start", Kind::date,
             tr("When the engine was started cold: 2026-05-09T05:20, or 05:20 where the study has "
                "a date"));
    m_fields.back().editor->setPlaceholderText(tr("like 2026-05-09T05:20"));
    addField(*form, tr("Share of consumption that goes into the air"), "aero_share", Kind::number,
             tr("0 to 1; about 0.6 at motorway speed (rule of thumb)"));
    m_fields.back().editor->setPlaceholderText(m_units.number(0.6, 1));
    m_fuel = new QComboBox(this);
    m_fuel->setObjectName("fuel");
    m_fuel->setAccessibleName(tr("Fuel"));
    m_fuel->addItems(
        {tr("Petrol"), tr("Petrol with 10 % ethanol (E10)"), tr("Diesel"), tr("Electric drive")});
    m_fuel->setCurrentIndex(static_cast<int>(m_study.properties.fuel));
    form->addRow(tr("Fuel"), m_fuel);
    return page;
}

/// @param name  the limit's, or that of a part of the device: "overspeed@left.rpm"
void StudyPropertiesDialog::addLimitRow(const core::LimitInfo& limit, const std::string& name)
{
    const int row = m_limits->rowCount();
    m_limits->insertRow(row);
    auto* rule = fixedItem(shown(wording::ruleName(m_units.language, limit.rule)));
    rule->setData(Qt::UserRole, text(name));
    m_limits->setItem(row, 0, rule);
    const std::string_view part =
        core::partedName(std::string_view(name).substr(0, name.find('.'))).part;
    m_limits->setItem(row, 1,
                      fixedItem(part.empty() ? limitWords(limit.name)
                                             : tr("%1 (%2)").arg(limitWords(limit.name),
                                                                 text(std::string(part)))));
    m_limits->item(row, 1)->setToolTip(text(name));
    const auto set = m_study.properties.limits.find(name);
    m_limits->setItem(row, 2,
                      new QTableWidgetItem(set != m_study.properties.limits.end()
                                               ? m_units.fieldText(set->second, 6)
                                               : QString()));
    m_limits->setItem(
        row, 3, fixedItem(limit.byDefault ? m_units.fieldText(*limit.byDefault, 6) : tr("none")));
    m_limits->setItem(row, 4, fixedItem(m_units.signShown(limit.unit)));
}

QWidget* StudyPropertiesDialog::makeLimitsPage()
{
    auto* page = new QWidget(this);
    page->setObjectName("limitsPage");
    auto* box = new QVBoxLayout(page);
    auto* top = new QLabel(tr("A rule without a limit is not checked. Empty fields take the usual "
                              "value."),
                           page);
    top->setWordWrap(true);
    box->addWidget(top);
    m_limits =
        makeTable("limits", tr("Limits of the screening rules"),
                  {tr("Rule"), tr("Limit"), tr("Your value"), tr("Usual value"), tr("Unit")}, page);
    for (const core::LimitInfo& limit : core::allLimits()) {
        if (limit.name == "stretch.km" || limit.name == "road_speed.target_kmh")
            continue; // they are on the page of the stretch
        addLimitRow(limit, std::string(limit.name));
        for (const auto& [name, value] : m_study.properties.limits)
            if (name != limit.name && core::findLimit(name) == &limit)
                addLimitRow(limit, name);
    }
    m_limits->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_limits->horizontalHeader()->setStretchLastSection(true); // no name of a rule gives way
    box->addWidget(m_limits);
    return page;
}

void StudyPropertiesDialog::addAccessoryRow(const QString& name, const QString& watts,
                                            const QString& minutes)
{
    const int row = m_accessories->rowCount();
    m_accessories->insertRow(row);
    m_accessories->setItem(row, 0, new QTableWidgetItem(name));
    m_accessories->setItem(row, 1, new QTableWidgetItem(watts));
    m_accessories->setItem(row, 2, new QTableWidgetItem(minutes));
}

QWidget* StudyPropertiesDialog::makeAccessoriesPage()
{
    auto* page = new QWidget(this);
    page->setObjectName("accessoriesPage");
    auto* box = new QVBoxLayout(page);
    auto* top = new QLabel(tr("Accessories that switch themselves off, a heated windscreen for "
                              "instance: what they draw, and after how long they drop out."),
                           page);
    top->setWordWrap(true);
    box->addWidget(top);
    m_accessories = makeTable("timedAccessories", tr("Timed accessories"),
                              {tr("Name"), tr("Watts"), tr("Minutes")}, page);
    for (const core::TimedAccessory& timer : m_study.properties.timed_accessories)
        addAccessoryRow(text(timer.name), m_units.fieldText(timer.watts),
                        m_units.fieldText(timer.minutes));
    m_accessories->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    box->addWidget(m_accessories);
    auto* buttons = new QHBoxLayout;
    auto* add = new QPushButton(tr("Add"), page);
    add->setObjectName("addAccessory");
    auto* remove = new QPushButton(tr("Remove"), page);
    remove->setObjectName("removeAccessory");
    buttons->addWidget(add);
    buttons->addWidget(remove);
    buttons->addStretch(1);
    box->addLayout(buttons);
    connect(add, &QPushButton::clicked, this, [this] {
        addAccessoryRow({}, {}, {});
        m_accessories->setFocus();
        m_accessories->setCurrentCell(m_accessories->rowCount() - 1, 0);
        m_accessories->editItem(m_accessories->currentItem());
    });
    connect(remove, &QPushButton::clicked, this,
            [this] { m_accessories->removeRow(m_accessories->currentRow()); });
    return page;
}

QWidget* StudyPropertiesDialog::makePlanPage()
{
    auto* page = new QWidget(this);
    page->setObjectName("planPage");
    auto* form = new QFormLayout(page);
    auto* top = new QLabel(tr("What was decided before the first run. Until it is fulfilled the "
                              "verdict says interim, and looks at it go on record: looking after "
                              "each block and stopping at the first good answer finds effects "
                              "that are not there."),
                           page);
    top->setWordWrap(true);
    form->addRow(top);
    addField(*form, tr("Sequence of configurations"), "plan.sequence", Kind::text,
             tr("ABA for instance; empty: no plan"));
    addField(*form, tr("Pairs a block"), "plan.pairs", Kind::number, tr("A whole number"));
    addField(*form, tr("Margin, %"), "plan.margin", Kind::number,
             tr("The smallest effect that you would care about"));
    addField(*form, tr("Confidence"), "plan.confidence", Kind::number, tr("Above 0.5 and below 1"));
    return page;
}

std::string StudyPropertiesDialog::valueOf(const Field& field) const
{
    const QString typed = field.editor->text();
    if (typed == field.shown)
        return baseText(field.property);
    if (field.kind == Kind::text || typed.trimmed().isEmpty())
        return typed.trimmed().toStdString();
    if (field.kind == Kind::date)
        return UnitsShown::dateOfFiles(typed);
    if (field.kind == Kind::numbers)
        return plainNumbers(typed);
    const auto number = UnitsShown::parseNumber(typed);
    if (!number || field.kind == Kind::number || m_units.distance != DistanceUnit::miles)
        return plain(typed);
    return storage::formatNumber(number->value * core::kKmPerMile);
}

core::Result<core::StudyProperties> StudyPropertiesDialog::properties() const
{
    std::vector<std::pair<std::string, std::string>> texts;
    for (const Field& field : m_fields)
        texts.emplace_back(field.property, valueOf(field));
    texts.emplace_back("fuel", kFuelNames[m_fuel->currentIndex()]);
    texts.emplace_back("notes", m_notes->toPlainText().toStdString());
    for (int row = 0; row < m_limits->rowCount(); ++row) {
        const QString typed = m_limits->item(row, 2)->text();
        texts.emplace_back(m_limits->item(row, 0)->data(Qt::UserRole).toString().toStdString(),
                           typed.trimmed().isEmpty() ? std::string() : plain(typed));
    }
    for (int row = 0; row < m_accessories->rowCount(); ++row) {
        const auto cell = [&](int column) {
            const QTableWidgetItem* item = m_accessories->item(row, column);
            return item ? item->text().trimmed() : QString();
        };
        if (cell(0).isEmpty() && cell(1).isEmpty() && cell(2).isEmpty())
            continue;
        texts.emplace_back("accessory_timer." + cell(0).toStdString(),
                           plain(cell(1)) + "," + plain(cell(2)));
    }
    core::StudyProperties properties;
    // The cold start may be a time of day on the study's date: that comes first.
    std::stable_partition(texts.begin(), texts.end(),
                          [](const auto& pair) { return pair.first == "date"; });
    for (const auto& [name, value] : texts) {
        if (value.empty())
            continue;
        if (const core::Outcome set = core::setProperty(properties, name, value); !set)
            return set.error();
    }
    return properties;
}

void StudyPropertiesDialog::showPage(const QString& objectName)
{
    for (int i = 0; i < m_pages->count(); ++i)
        if (m_pages->widget(i)->objectName() == objectName)
            m_pages->setCurrentIndex(i);
}

void StudyPropertiesDialog::showFault(const core::Error& error)
{
    m_fault->setText(describedHere(m_units.language, error));
    m_fault->show();
    const auto field = std::find_if(m_fields.begin(), m_fields.end(), [&](const Field& candidate) {
        return candidate.property == error.where.file;
    });
    if (field == m_fields.end())
        return;
    for (int i = 0; i < m_pages->count(); ++i)
        if (m_pages->widget(i)->isAncestorOf(field->editor))
            m_pages->setCurrentIndex(i);
    field->editor->setFocus();
    field->editor->selectAll();
}

void StudyPropertiesDialog::accept()
{
    const auto wanted = properties();
    if (!wanted) {
        showFault(wanted.error());
        return;
    }
    if (!(wanted.value() == m_study.properties)) {
        if (const core::Outcome taken = m_apply(wanted.value()); !taken) {
            showFault(taken.error());
            return;
        }
    }
    QDialog::accept();
}

} // namespace bothways::app
