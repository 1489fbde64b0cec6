// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: one page of many fields, each with its label and its range, and all that comes of them.
#include "app/desktop/planning/plan_page.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/said.h"
#include "app/desktop/planning/form_parts.h"
#include "app/desktop/planning/power_plot.h"
#include "app/desktop/planning/widths_plot.h"
#include "app/wording/plan.h"
#include "core/study/units.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTableWidget>
#include <QTimer>
#include <QtConcurrent>

namespace bothways::app {
namespace {

constexpr int kSettle_ms = 250; ///< until the sequences are simulated after the last change
constexpr int kRepeats = 2000;

} // namespace

PlanPage::PlanPage(QWidget* parent)
    : QWidget(parent),
      m_later(new QTimer(this)),
      m_watcher(new QFutureWatcher<std::shared_ptr<core::Result<SequenceRows>>>(this))
{
    setObjectName(QStringLiteral("planPage"));
    QWidget* form = makeForm();
    parts::layOut(*this, form, makeAnswer());
    m_later->setSingleShot(true);
    m_later->setInterval(kSettle_ms);
    connect(m_later, &QTimer::timeout, this, &PlanPage::startSequences);
    connect(m_watcher, &QFutureWatcherBase::finished, this, &PlanPage::showSequences);
    recompute();
}

PlanPage::~PlanPage()
{
    m_stop.request_stop();
    m_watcher->waitForFinished();
}

bool PlanPage::isBusy() const
{
    return m_later->isActive() || m_watcher->isRunning();
}

QWidget* PlanPage::makeForm()
{
    auto* widget = new QWidget;
    widget->setMaximumWidth(30 * fontMetrics().averageCharWidth() + 160);
    auto* form = new QFormLayout(widget);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    m_sequence = new QComboBox;
    m_sequence->setObjectName(QStringLiteral("planSequence"));
    m_sequence->setEditable(true);
    m_sequence->addItems({QStringLiteral("ABA"), QStringLiteral("ABBA"), QStringLiteral("ABABA"),
                          QStringLiteral("ABABABA"), QStringLiteral("AB")});
    m_sequence->setToolTip(tr("A is the baseline, B the device. Equal neighbours are one block."));
    parts::addRow(*form, tr("Sequence"), m_sequence);
    m_pairs = parts::countField(QStringLiteral("planPairs"), 1, 1000, 4);
    parts::addRow(*form, tr("Pairs a block"), m_pairs);
    m_pairMinutes =
        parts::numberField(QStringLiteral("planPairMinutes"), 0.5, 1000.0, 15.0, 1, tr(" min"));
    parts::addRow(*form, tr("Time for a pair"), m_pairMinutes);
    m_switchMinutes =
        parts::numberField(QStringLiteral("planSwitchMinutes"), 0.0, 1000.0, 20.0, 1, tr(" min"));
    parts::addRow(*form, tr("Time for a switch"), m_switchMinutes);
    m_stretch = parts::numberField(QStringLiteral("planStretch"), 0.1, 1000.0, 5.0, 1, tr(" km"));
    parts::addRow(*form, tr("Length of the stretch"), m_stretch);
    addNoiseFields(*form);
    connect(m_sequence, &QComboBox::currentTextChanged, this, &PlanPage::recompute);
    connect(m_pairs, &QSpinBox::valueChanged, this, &PlanPage::recompute);
    for (QDoubleSpinBox* field :
         {m_pairMinutes, m_switchMinutes, m_stretch, m_want, m_power, m_confidence, m_hours})
        connect(field, &QDoubleSpinBox::valueChanged, this, &PlanPage::recompute);
    return widget;
}

void PlanPage::addNoiseFields(QFormLayout& form)
{
    m_noise = parts::numberField(QStringLiteral("planNoise"), 0.001, 100.0, 1.0, 3, tr(" %"));
    m_noise->setToolTip(
        tr("How much one pair differs from the next when nothing changes. 1 % is a careful day "
           "(common practice, no source)."));
    parts::addRow(form, tr("Noise of a pair"), m_noise);
    m_noiseOfStudy = new QPushButton(tr("Noise of this study"));
    m_noiseOfStudy->setObjectName(QStringLiteral("planNoiseOfStudy"));
    m_noiseOfStudy->setEnabled(false);
    form.addRow(QString(), m_noiseOfStudy);
    auto* ofStudies = new QPushButton(tr("Noise of several studies…"));
    ofStudies->setObjectName(QStringLiteral("planNoiseOfStudies"));
    form.addRow(QString(), ofStudies);
    connect(ofStudies, &QPushButton::clicked, this, &PlanPage::noiseStudiesRequested);
    m_noiseFrom = parts::sentence(QStringLiteral("planNoiseFrom"));
    form.addRow(m_noiseFrom);
    m_confidence =
        parts::numberField(QStringLiteral("planConfidence"), 50.1, 99.99, 95.0, 2, tr(" %"));
    parts::addRow(form, tr("Confidence"), m_confidence);
    m_power = parts::numberField(QStringLiteral("planPowerField"), 50.0, 99.9, 80.0, 1, tr(" %"));
    m_power->setToolTip(tr("Of 100 such days, how many should show the effect."));
    parts::addRow(form, tr("Power"), m_power);
    m_wanted = new QCheckBox(tr("Find the pairs for an effect of"));
    m_wanted->setObjectName(QStringLiteral("planWanted"));
    m_want = parts::numberField(QStringLiteral("planWant"), 0.01, 99.0, 1.0, 2, tr(" %"));
    m_want->setAccessibleName(tr("Effect to be seen"));
    m_want->setEnabled(false);
    form.addRow(m_wanted);
    form.addRow(QString(), m_want);
    m_hours = parts::numberField(QStringLiteral("planHours"), 0.1, 100.0, 4.0, 1, tr(" h"));
    parts::addRow(form, tr("Hours there are"), m_hours);
    connect(m_noiseOfStudy, &QPushButton::clicked, this, &PlanPage::takeNoiseOfStudy);
    connect(m_noise, &QDoubleSpinBox::valueChanged, this, [this] {
        m_measured.reset();
        parts::setSentence(*m_noiseFrom, {});
        recompute();
    });
    connect(m_wanted, &QCheckBox::toggled, this, [this](bool on) {
        m_want->setEnabled(on);
        m_pairs->setEnabled(!on);
        recompute();
    });
}

QBoxLayout* PlanPage::makeAnswer()
{
    auto* column = new QVBoxLayout;
    column->setSpacing(12);
    m_answer = parts::sentence(QStringLiteral("planAnswer"));
    parts::enlarge(*m_answer, 1.2, true);
    column->addWidget(m_answer);
    m_upper = parts::sentence(QStringLiteral("planUpper"));
    column->addWidget(m_upper);
    m_known = parts::sentence(QStringLiteral("planKnownNoise"));
    column->addWidget(m_known);
    auto* buttons = new QHBoxLayout;
    m_tie = new QPushButton(tr("Tie this plan to the study"));
    m_tie->setObjectName(QStringLiteral("planTie"));
    m_card = new QPushButton(tr("Run card…"));
    m_card->setObjectName(QStringLiteral("planCard"));
    buttons->addWidget(m_tie);
    buttons->addWidget(m_card);
    buttons->addStretch();
    column->addLayout(buttons);
    m_plot = new PowerPlot;
    m_plot->setObjectName(QStringLiteral("planPower"));
    m_plot->setMinimumHeight(240);
    column->addWidget(m_plot);
    auto* heading = parts::heading(QStringLiteral("planSequencesHeading"));
    heading->setText(tr("What fits into the hours, and what it is weak against"));
    column->addWidget(heading);
    m_sequencesState = parts::sentence(QStringLiteral("planSequencesState"));
    column->addWidget(m_sequencesState);
    m_sequences = parts::readingTable(QStringLiteral("planSequences"));
    m_sequences->setAccessibleName(heading->text());
    QFont small = m_sequences->horizontalHeader()->font(); // nine columns in a narrow page
    small.setPointSizeF(0.85 * QFontInfo(small).pointSizeF());
    m_sequences->horizontalHeader()->setFont(small);
    column->addWidget(m_sequences);
    m_weak = parts::sentence(QStringLiteral("planWeak"));
    column->addWidget(m_weak);
    m_widths = new WidthsPlot;
    m_widths->setObjectName(QStringLiteral("planWidths"));
    m_widths->setAccessibleName(WidthsPlot::tr("More switches or more pairs, for the same hours"));
    m_widths->setMinimumHeight(240);
    column->addWidget(m_widths);
    m_widthsWords = parts::sentence(QStringLiteral("planWidthsWords"));
    column->addWidget(m_widthsWords);
    column->addStretch();
    connect(m_tie, &QPushButton::clicked, this, [this] {
        if (m_plan)
            emit tieRequested({m_plan->sequence, m_plan->pairs_per_block,
                               m_result ? m_result->analysis.options.margin_pct : 1.0,
                               m_plan->options.confidence});
    });
    connect(m_card, &QPushButton::clicked, this, [this] {
        if (m_plan)
            emit runCardRequested(*m_plan);
    });
    return column;
}

void PlanPage::setResult(std::shared_ptr<const ResultSet> result)
{
    if (m_result == result)
        return; // what a person typed since stays
    m_result = std::move(result);
    m_noiseOfStudy->setEnabled(m_result && m_result->analysis.headline);
    followTie();
    if (m_result) {
        const core::Limits& limits = m_result->study.properties.limits;
        if (const auto km = limits.find("stretch.km"); km != limits.end())
            m_stretch->setValue(km->second);
    }
}

void PlanPage::setReadOnly(bool readOnly)
{
    m_readOnly = readOnly;
    followTie();
}

void PlanPage::followTie()
{
    m_tie->setEnabled(m_plan && m_result && !m_readOnly);
    m_tie->setToolTip(m_readOnly
                          ? tr("This study is open for reading only.")
                          : tr("Until it is fulfilled the verdict says interim, and looks at it "
                               "are on record."));
}

void PlanPage::setUnits(const UnitsShown& units)
{
    if (m_numbers.units() == units)
        return;
    m_numbers = NumberWords(units);
    recompute();
}

void PlanPage::setTheme(const Theme& theme)
{
    if (m_plot->theme() == theme)
        return;
    m_plot->setTheme(theme);
    m_widths->setTheme(theme);
    recompute();
}

void PlanPage::takeNoiseOfStudy()
{
    if (!m_result || !m_result->analysis.headline)
        return;
    const core::Headline& headline = *m_result->analysis.headline;
    setNoise({headline.s, headline.df}, {});
}

void PlanPage::setNoise(const core::Noise& noise, const QStringList& names)
{
    m_noise->setValue(100.0 * noise.s);
    m_measured = noise;
    QString from;
    if (!names.isEmpty())
        from = tr("Pooled from %1 (%n degree(s) of freedom).", nullptr, static_cast<int>(noise.df))
                   .arg(names.join(tr(", ", "between names of studies")));
    parts::setSentence(*m_noiseFrom, from);
    recompute();
}

core::PlanOptions PlanPage::options() const
{
    core::PlanOptions options;
    options.sequence = m_sequence->currentText().trimmed().toUpper().toStdString();
    options.pairs_per_block = m_pairs->value();
    options.pair_min = m_pairMinutes->value();
    options.switch_min = m_switchMinutes->value();
    options.stretch_km = m_stretch->value();
    options.s = core::noiseFromPct(m_noise->value());
    if (m_measured) { // the field has three decimals only
        options.s = m_measured->s;
        options.s_df = m_measured->df;
    }
    options.confidence = m_confidence->value() / 100.0;
    options.power = m_power->value() / 100.0;
    return options;
}

void PlanPage::recompute()
{
    if (!m_answer || !m_sequences)
        return; // still being built
    const core::Result<core::Plan> plan =
        m_wanted->isChecked() ? core::planFor(core::logFromPct(m_want->value()), options())
                              : core::makePlan(options());
    m_stop.request_stop();
    m_later->start();
    m_card->setEnabled(static_cast<bool>(plan));
    m_plan = plan ? std::optional(plan.value()) : std::nullopt;
    followTie();
    if (!plan) {
        showFault(said(m_numbers.units().language, plan.error().message));
        return;
    }
    showPlan();
}

void PlanPage::showFault(const QString& words)
{
    m_answer->setText(tr("No plan: %1.").arg(words));
    parts::setSentence(*m_upper, {});
    parts::setSentence(*m_known, {});
    m_plot->setVisible(false);
}

void PlanPage::showPlan()
{
    const core::Plan& plan = *m_plan;
    const Language& in = m_numbers.units().language;
    const QString distance = m_numbers.units().distanceWithUnit(plan.distance_km, 0);
    const QString reach = tr("The interval will reach %1 % to either side; an effect of %2 % or "
                             "more would be shown by %3 of 100 such days.")
                              .arg(m_numbers.significant(core::pctFromLog(plan.half_width_log)),
                                   m_numbers.significant(core::pctFromLog(plan.detectable_log)),
                                   m_numbers.fixed(100.0 * plan.options.power, 0));
    m_answer->setText(shown(wording::planSentence(in, plan, distance.toStdString())) +
                      QLatin1Char(' ') + reach);
    parts::setSentence(*m_upper, (shown(wording::planCaution(in, plan.sequence)) +
                                  QLatin1Char(' ') + shown(wording::uncertainNoise(in, plan)))
                                     .trimmed());
    parts::setSentence(
        *m_known,
        plan.borrowed_half_width_log && m_measured
            ? tr("With this vehicle's noise known from those days the interval would reach %1 %.")
                  .arg(m_numbers.significant(core::pctFromLog(*plan.borrowed_half_width_log)))
            : QString());
    m_plot->setVisible(true);
    m_plot->show(plan, m_numbers);
}

void PlanPage::startSequences()
{
    m_stop.request_stop();
    m_watcher->waitForFinished();
    m_stop = std::stop_source();
    m_sequencesState->setText(tr("Simulating days…"));
    m_sequencesState->setVisible(true);
    m_watcher->setFuture(QtConcurrent::run(
        [options = options(), hours = m_hours->value(), stop = m_stop.get_token()] {
            using Answer = core::Result<SequenceRows>;
            const auto plans = core::sequencesFor(hours, options);
            if (!plans)
                return std::make_shared<Answer>(plans.error());
            SequenceRows rows;
            for (const core::Plan& plan : plans.value()) {
                const auto weakness =
                    core::simulateWeakness(plan.options, {}, kRepeats, 20260314, stop);
                if (!weakness)
                    return std::make_shared<Answer>(weakness.error());
                rows.push_back({plan, weakness.value()});
            }
            return std::make_shared<Answer>(std::move(rows));
        }));
}

void PlanPage::showSequences()
{
    const auto answer = m_watcher->result();
    if (!*answer && answer->error().code == core::ErrorCode::stopped)
        return;
    m_sequences->setRowCount(0);
    if (!*answer) {
        m_sequencesState->setText(said(m_numbers.units().language, answer->error().message));
        parts::fitToRows(*m_sequences);
        return;
    }
    parts::setSentence(*m_sequencesState, {});
    const Language& in = m_numbers.units().language;
    QStringList head{tr("sequence"), tr("pairs a block"), tr("hours"), tr("finds, %")};
    for (const std::string& weakness : wording::weaknessHeads(in))
        head.append(QString::fromStdString(weakness));
    parts::setSentence(*m_weak, shown(wording::weaknessExplained(in)));
    m_sequences->setColumnCount(static_cast<int>(head.size()));
    QStringList lines = head; // a word a line: nine columns in a narrow page
    m_sequences->setHorizontalHeaderLabels(
        lines.replaceInStrings(QStringLiteral(" "), QStringLiteral("\n")));
    for (const SequenceRow& row : answer->value()) {
        const int at = m_sequences->rowCount();
        m_sequences->insertRow(at);
        QStringList cells{QString::fromStdString(row.plan.sequence),
                          m_numbers.fixed(row.plan.pairs_per_block, 0),
                          m_numbers.fixed(row.plan.road_hours, 1),
                          m_numbers.significant(core::pctFromLog(row.plan.detectable_log))};
        for (const double coverage : row.weakness.coverage)
            cells.append(m_numbers.fixed(100.0 * coverage, 0));
        for (int column = 0; column < static_cast<int>(cells.size()); ++column)
            m_sequences->setItem(at, column, new QTableWidgetItem(cells[column]));
    }
    parts::fitToRows(*m_sequences);
    showWidths(answer->value());
}

void PlanPage::showWidths(const SequenceRows& rows)
{
    std::vector<core::Plan> plans;
    for (const SequenceRow& row : rows)
        plans.push_back(row.plan);
    m_widths->setVisible(!plans.empty());
    m_widths->show(plans, m_numbers);
    parts::setSentence(*m_widthsWords,
                       shown(wording::planWidthsExplained(m_numbers.units().language)));
}

} // namespace bothways::app
