// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one form of many factors, each with its label, its range and its source, and what comes of
// it.
#include "app/desktop/planning/ledger_page.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/said.h"
#include "app/desktop/planning/form_parts.h"
#include "app/desktop/planning/ledger_flow.h"
#include "app/desktop/plots/plot_parts.h"
#include "app/wording/ledger.h"
#include "core/study/fuel.h"
#include "core/study/units.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QTableWidget>

#include <cmath>

namespace bothways::app {
namespace {

constexpr double kAccessory_w = 100.0;

core::Range rangeOf(const std::array<QDoubleSpinBox*, 3>& fields)
{
    return {fields[0]->value(), fields[1]->value(), fields[2]->value()};
}

void setRange(const std::array<QDoubleSpinBox*, 3>& fields, const core::Range& range)
{
    fields[0]->setValue(range.low);
    fields[1]->setValue(range.middle);
    fields[2]->setValue(range.high);
}

} // namespace

void ExpectedPlot::show(const core::Ledger& ledger, const core::Analysis* analysis,
                        const NumberWords& numbers)
{
    clearPicture();
    const bool measured = analysis && analysis->headline;
    const core::Range& net = ledger.net_pct;
    QStringList names{tr("expected")};
    parts::addUpright(*this, 0.0, QPen(theme().ink, 1.5));
    const auto bar = [&](double row, double low, double middle, double high, const QColor& colour) {
        QPen pen(colour, 4.0);
        pen.setCapStyle(Qt::FlatCap);
        parts::addLine(*this, {low, row}, {high, row}, pen);
        parts::addMarks(*this, {{middle, row}},
                        QCPScatterStyle(QCPScatterStyle::ssDiamond, QPen(theme().paper, 1.0),
                                        QBrush(colour), 14));
    };
    PlotNumbers table({QStringLiteral("what"), QStringLiteral("low_pct"),
                       QStringLiteral("middle_pct"), QStringLiteral("high_pct")});
    bar(0.0, net.low, net.middle, net.high, theme().note);
    table.add({QStringLiteral("expected"), net.low, net.middle, net.high});
    QList<double> all{0.0, net.low, net.high};
    if (measured) {
        const core::Headline& h = *analysis->headline;
        names.append(tr("measured"));
        const double low = core::pctFromLog(h.low_log), high = core::pctFromLog(h.high_log);
        bar(-1.0, low, core::pctFromLog(h.effect_log), high, theme().result);
        table.add({QStringLiteral("measured"), low, core::pctFromLog(h.effect_log), high});
        all << low << high;
    }
    parts::setRows(*this, names);
    xAxis->setTicker(QSharedPointer<NumberTicker>::create(true));
    xAxis->setLabel(tr("change of consumption, per cent: left of zero is less"));
    setWhole(xAxis, parts::rangeAround(all, 0.12));
    setNumbers(std::move(table));
    setWords(tr("Expected and measured"),
             tr("Expected change between %1 and %2 %.")
                 .arg(numbers.significant(net.low), numbers.significant(net.high)));
    finish();
}

LedgerPage::LedgerPage(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("ledgerPage"));
    QWidget* form = makeForm();
    parts::layOut(*this, form, makeAnswer());
    showFactors(core::LedgerOptions::forFuel(core::Fuel::petrol));
    nameTerms();
    recompute();
}

LedgerPage::RangeFields LedgerPage::addRange(QGridLayout& grid, const QString& objectName,
                                             const QString& label, const QString& source)
{
    const int row = grid.rowCount();
    auto* name = new QLabel(label);
    name->setToolTip(source);
    grid.addWidget(name, row, 0);
    RangeFields fields{};
    const QStringList which{tr("low"), tr("middle"), tr("high")};
    for (int i = 0; i < 3; ++i) {
        auto* field = parts::numberField(objectName + QString::number(i), 0.01, 1.0, 0.5, 2);
        field->setSingleStep(0.01);
        field->setAccessibleName(label + QLatin1Char(' ') + which[i]);
        field->setToolTip(source);
        connect(field, &QDoubleSpinBox::valueChanged, this, &LedgerPage::recompute);
        grid.addWidget(field, row, 1 + i);
        fields[static_cast<std::size_t>(i)] = field;
    }
    auto* from = new QLabel(source);
    from->setWordWrap(true);
    parts::enlarge(*from, 0.85, false);
    grid.addWidget(from, row + 1, 0, 1, 4);
    return fields;
}

QWidget* LedgerPage::makeForm()
{
    auto* widget = new QWidget;
    auto* column = new QVBoxLayout(widget);
    column->setContentsMargins(0, 0, 0, 0);
    auto* form = new QFormLayout;
    m_output = parts::numberField(QStringLiteral("ledgerOutput"), 1.0, 1e6, 600.0, 0, tr(" W"));
    parts::addRow(*form, tr("Electrical output"), m_output);
    m_speed = parts::numberField(QStringLiteral("ledgerSpeed"), 1.0, 500.0, 100.0, 0, tr(" km/h"));
    parts::addRow(*form, tr("Road speed"), m_speed);
    m_consumption = parts::numberField(QStringLiteral("ledgerConsumption"), 0.1, 1000.0, 8.0, 2,
                                       tr(" L/100 km"));
    parts::addRow(*form, tr("Consumption"), m_consumption);
    m_fuel = new QComboBox;
    m_fuel->setObjectName(QStringLiteral("ledgerFuel"));
    m_fuel->addItems({tr("petrol"), tr("petrol E10"), tr("diesel"), tr("electric drive")});
    parts::addRow(*form, tr("Fuel"), m_fuel);
    m_heating =
        parts::numberField(QStringLiteral("ledgerHeating"), 0.1, 100.0, 32.2, 2, tr(" MJ/L"));
    m_heating->setToolTip(tr("Lower heating value. Between published figures for petrol of 32.05 "
                             "(US EPA) and 32.36 MJ/L "
                             "(Argonne GREET); diesel 35.8 to 36.1."));
    parts::addRow(*form, tr("Heating value"), m_heating);
    m_relief = new QCheckBox;
    m_relief->setObjectName(QStringLiteral("ledgerRelief"));
    m_cost = new QCheckBox;
    m_cost->setObjectName(QStringLiteral("ledgerCost"));
    form->addRow(m_relief);
    form->addRow(m_cost);
    column->addLayout(form);
    auto* grid = new QGridLayout;
    grid->addWidget(new QLabel(tr("low")), 0, 1);
    grid->addWidget(new QLabel(tr("middle")), 0, 2);
    grid->addWidget(new QLabel(tr("high")), 0, 3);
    m_alternator = addRange(
        *grid, QStringLiteral("ledgerAlternator"), tr("Alternator"),
        tr("0.67 in the EU's guidelines, 0.55 in Bradfield (2008); range common practice."));
    m_marginal = addRange(
        *grid, QStringLiteral("ledgerMarginal"), tr("Engine, next watt"),
        tr("Decision (EU) 2020/728: 0.264 L/kWh petrol, about 0.43; range common practice."));
    m_generator = addRange(*grid, QStringLiteral("ledgerGenerator"), tr("Generator"),
                           tr("Common practice, no source."));
    m_drive = addRange(*grid, QStringLiteral("ledgerDrive"), tr("Drive to the wheels"),
                       tr("Common practice, no source."));
    column->addLayout(grid);
    auto* last = new QFormLayout;
    m_induction = parts::numberField(QStringLiteral("ledgerInduction"), 0.0, 0.99, 1.0 / 3.0, 3);
    m_induction->setToolTip(
        tr("Axial induction of the rotor; one third at the point of most power (Betz 1920)."));
    parts::addRow(*last, tr("Induction"), m_induction);
    column->addLayout(last);
    column->addStretch();
    for (QDoubleSpinBox* field : {m_output, m_speed, m_consumption, m_heating, m_induction})
        connect(field, &QDoubleSpinBox::valueChanged, this, &LedgerPage::recompute);
    connect(m_relief, &QCheckBox::toggled, this, &LedgerPage::recompute);
    connect(m_cost, &QCheckBox::toggled, this, &LedgerPage::recompute);
    connect(m_fuel, &QComboBox::currentIndexChanged, this, &LedgerPage::takeFuel);
    widget->setMaximumWidth(column->sizeHint().width() + 20);
    return widget;
}

QBoxLayout* LedgerPage::makeAnswer()
{
    auto* column = new QVBoxLayout;
    column->setSpacing(12);
    m_answer = parts::sentence(QStringLiteral("ledgerAnswer"));
    parts::enlarge(*m_answer, 1.2, true);
    column->addWidget(m_answer);
    m_flow = new LedgerFlow;
    column->addWidget(m_flow);
    m_table = parts::readingTable(QStringLiteral("ledgerTable"));
    m_table->setAccessibleName(tr("Relief, cost and net"));
    column->addWidget(m_table);
    m_explained = parts::sentence(QStringLiteral("ledgerExplained"));
    column->addWidget(m_explained);
    m_watts = parts::sentence(QStringLiteral("ledgerWatts"));
    column->addWidget(m_watts);
    m_plot = new ExpectedPlot;
    m_plot->setObjectName(QStringLiteral("ledgerExpected"));
    m_plot->setMinimumHeight(170);
    column->addWidget(m_plot);
    m_beside = parts::sentence(QStringLiteral("ledgerBeside"));
    column->addWidget(m_beside);
    m_accessory = parts::sentence(QStringLiteral("ledgerAccessory"));
    column->addWidget(m_accessory);
    column->addStretch();
    return column;
}

void LedgerPage::showFactors(const core::LedgerOptions& o)
{
    m_filling = true;
    m_heating->setValue(o.heating_value_mj_per_l);
    m_induction->setValue(o.induction);
    m_relief->setChecked(o.relief);
    m_cost->setChecked(o.cost);
    setRange(m_alternator, o.alternator);
    setRange(m_marginal, o.marginal);
    setRange(m_generator, o.generator);
    setRange(m_drive, o.drive);
    m_filling = false;
}

void LedgerPage::takeFuel()
{
    core::LedgerOptions o =
        core::LedgerOptions::forFuel(static_cast<core::Fuel>(m_fuel->currentIndex()));
    o.relief = m_relief->isChecked();
    o.cost = m_cost->isChecked();
    const bool electric = o.fuel == core::Fuel::electric;
    m_heating->setSuffix(electric ? tr(" MJ/kWh") : tr(" MJ/L"));
    m_consumption->setSuffix(electric ? tr(" kWh/100 km") : tr(" L/100 km"));
    showFactors(o);
    nameTerms();
    recompute();
}

/// The two sides of the ledger, as it is said everywhere.
void LedgerPage::nameTerms()
{
    const Language& in = m_numbers.units().language;
    const auto fuel = static_cast<core::Fuel>(m_fuel->currentIndex());
    m_relief->setText(withCapital(shown(wording::reliefName(in, fuel))));
    m_cost->setText(withCapital(shown(wording::dragName(in))));
}

void LedgerPage::setResult(std::shared_ptr<const ResultSet> result)
{
    if (m_result == result)
        return; // what a person typed since stays
    m_result = std::move(result);
    if (!m_result) {
        recompute();
        return;
    }
    const QSignalBlocker quiet(m_fuel);
    m_fuel->setCurrentIndex(static_cast<int>(core::fuelOf(m_result->study)));
    m_filling = true;
    if (m_result->analysis.headline)
        m_consumption->setValue(m_result->analysis.headline->baseline_l_per_100km);
    const core::KnownOfStudy known = core::knownOf(m_result->study);
    const auto take = [](QDoubleSpinBox& field, const std::optional<core::KnownNumber>& now,
                         const std::optional<core::KnownNumber>& before) {
        if (now && now != before) // what a person typed since stays
            field.setValue(now->value);
    };
    take(*m_output, known.output_w, m_known.output_w);
    take(*m_speed, known.speed_kmh, m_known.speed_kmh);
    m_known = known;
    m_filling = false;
    takeFuel();
}

void LedgerPage::setUnits(const UnitsShown& units)
{
    if (m_numbers.units() == units)
        return;
    m_numbers = NumberWords(units);
    nameTerms();
    recompute();
}

void LedgerPage::setTheme(const Theme& theme)
{
    if (m_plot->theme() == theme)
        return;
    m_flow->setTheme(theme);
    m_plot->setTheme(theme);
    recompute();
}

core::LedgerOptions LedgerPage::options() const
{
    core::LedgerOptions o;
    o.output_w = m_output->value();
    o.speed_kmh = m_speed->value();
    o.consumption_l_per_100km = m_consumption->value();
    o.fuel = static_cast<core::Fuel>(m_fuel->currentIndex());
    o.heating_value_mj_per_l = m_heating->value();
    // The field shows three digits; what they round is one third.
    const double third = 1.0 / 3.0;
    o.induction = std::abs(m_induction->value() - third) < 5e-4 ? third : m_induction->value();
    o.relief = m_relief->isChecked();
    o.cost = m_cost->isChecked();
    o.alternator = rangeOf(m_alternator);
    o.marginal = rangeOf(m_marginal);
    o.generator = rangeOf(m_generator);
    o.drive = rangeOf(m_drive);
    return o;
}

void LedgerPage::recompute()
{
    if (m_filling || !m_plot)
        return;
    const core::Result<core::Ledger> ledger = core::makeLedger(options());
    const bool good = static_cast<bool>(ledger);
    for (QWidget* widget : {static_cast<QWidget*>(m_flow), static_cast<QWidget*>(m_table),
                            static_cast<QWidget*>(m_plot)})
        widget->setVisible(good);
    if (!good) {
        m_ledger.reset();
        m_answer->setText(
            tr("No ledger: %1.").arg(said(m_numbers.units().language, ledger.error().message)));
        for (QLabel* words : {m_explained, m_watts, m_beside, m_accessory})
            parts::setSentence(*words, {});
        return;
    }
    m_ledger = ledger.value();
    showLedger();
}

void LedgerPage::showLedger()
{
    const core::Ledger& ledger = *m_ledger;
    const core::Range& pct = ledger.net_pct;
    const auto size = [&](double value) {
        return value < 0.0 ? tr("%1 % less").arg(m_numbers.significant(-value))
                           : tr("%1 % more").arg(m_numbers.significant(value));
    };
    QString answer = tr("From first principles, expect %1 (from %2 to %3).")
                         .arg(size(pct.middle), size(pct.low), size(pct.high));
    if (pct.low < 0.0 && pct.middle > 0.0)
        answer += QLatin1Char(' ') +
                  tr("Less is reached only with the best generator and drive beside the worst "
                     "alternator and engine.");
    m_answer->setText(answer);
    m_flow->show(ledger, m_numbers);
    showTable();
    const Language& in = m_numbers.units().language;
    parts::setSentence(*m_explained, shown(wording::ledgerExplained(in, ledger.options.fuel)));
    parts::setSentence(*m_watts, wattsSentence());
    parts::setSentence(
        *m_beside, m_result ? shown(wording::measuredBesideLedger(in, m_result->analysis, ledger))
                            : QString());
    parts::setSentence(*m_accessory, accessorySentence());
    m_plot->show(ledger, m_result ? &m_result->analysis : nullptr, m_numbers);
}

void LedgerPage::showTable()
{
    const Language& in = m_numbers.units().language;
    m_table->setColumnCount(4);
    m_table->setHorizontalHeaderLabels({shown(wording::ledgerUnit(in, m_ledger->options.fuel)),
                                        tr("low"), tr("middle"), tr("high")});
    const std::vector<wording::LedgerRow> rows = wording::ledgerRows(in, *m_ledger);
    m_table->setRowCount(static_cast<int>(rows.size()));
    int line = 0;
    for (const wording::LedgerRow& row : rows) {
        parts::setCell(*m_table, line, 0, shown(row.name));
        int column = 1;
        for (const double value : {row.range.low, row.range.middle, row.range.high})
            parts::setCell(*m_table, line, column++,
                           m_numbers.units().signedNumber(value, row.decimals), true);
        ++line;
    }
    parts::fitToRows(*m_table);
}

QString LedgerPage::wattsSentence() const
{
    if (!m_result || !m_result->analysis.detectable)
        return tr("Open a study with a verdict to see how many watts the device must deliver "
                  "before that study could "
                  "see it.");
    const double more_pct = core::pctFromLog(m_result->analysis.detectable->log);
    core::LedgerOptions relief = m_ledger->options;
    relief.cost = false;
    relief.relief = true;
    const auto net = core::wattsToSee(m_ledger->options, more_pct);
    const auto alone = core::wattsToSee(relief, more_pct);
    if (!net || !alone)
        return tr("With these factors a watt is worth nothing, so no output could be seen.");
    return tr("This study can detect a change of %1 %. The net effect reaches that at %2 W; the "
              "relief alone, if the "
              "drag cost nothing, at %3 W. Below that, this study cannot tell the device from "
              "nothing.")
        .arg(m_numbers.significant(more_pct), m_numbers.significant(*net),
             m_numbers.significant(*alone));
}

QString LedgerPage::accessorySentence() const
{
    core::LedgerOptions accessory = m_ledger->options;
    accessory.output_w = kAccessory_w;
    accessory.cost = false;
    accessory.relief = true;
    const auto ledger = core::makeLedger(accessory);
    if (!ledger)
        return {};
    double stretch_km = 5.0;
    if (m_result) {
        const core::Limits& limits = m_result->study.properties.limits;
        if (const auto km = limits.find("stretch.km"); km != limits.end())
            stretch_km = km->second;
    }
    const double litres = ledger.value().relief_l_per_100km.middle;
    constexpr double kMlPerL = 1000.0;
    return tr("100 W of accessories cost some %1 mL on a stretch of %2 at this speed, %3 % of the "
              "consumption: an "
              "accessory that drops out is as large as many effects that are looked for.")
        .arg(m_numbers.significant(litres * stretch_km / 100.0 * kMlPerL),
             m_numbers.units().distanceWithUnit(stretch_km, 1),
             m_numbers.significant(100.0 * litres / m_consumption->value()));
}

} // namespace bothways::app
