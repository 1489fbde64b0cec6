// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/result_page.h"

#include "app/desktop/look/help_topics.h"
#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/state_marks.h"
#include "app/desktop/look/turning_layout.h"
#include "app/desktop/pages/companions_rows.h"
#include "app/desktop/plots/result_plots.h"

#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QToolButton>
#include <QVBoxLayout>

namespace bothways::app {
namespace {

constexpr double kSmallestMargin_pct = 0.01;
constexpr double kLargestMargin_pct = 99.0;
constexpr double kLowestConfidence_pct = 50.1;
constexpr double kHighestConfidence_pct = 99.9;
constexpr double kLowestClaim_pct = -99.9; // nothing saves all of it
constexpr double kHighestClaim_pct = 999.0;

const QString kPerCent = QStringLiteral("\u00a0%");

/// A field for what someone claims: "none" at zero, which nobody claims, and no per cent of it.
class ClaimBox final : public QDoubleSpinBox {
public:
    using QDoubleSpinBox::QDoubleSpinBox;

protected:
    QString textFromValue(double value) const override
    {
        return value == 0.0 ? ResultPage::tr("none", "no claim")
                            : QDoubleSpinBox::textFromValue(value) + kPerCent;
    }
    double valueFromText(const QString& text) const override
    {
        const QString number = withoutSign(text);
        return isNone(number) ? 0.0 : QDoubleSpinBox::valueFromText(number);
    }
    QValidator::State validate(QString& text, int& at) const override
    {
        QString number = withoutSign(text);
        if (isNone(number))
            return QValidator::Acceptable;
        return ResultPage::tr("none", "no claim").startsWith(number)
                   ? QValidator::Intermediate
                   : QDoubleSpinBox::validate(number, at);
    }

private:
    static QString withoutSign(QString text) { return text.remove(u'%').trimmed(); }
    static bool isNone(const QString& text)
    {
        return text.isEmpty() || text == ResultPage::tr("none", "no claim");
    }
};

} // namespace

ResultPage::ResultPage(QWidget* parent) : ResultView(parent)
{
    auto* column = new QVBoxLayout;
    column->addWidget(makeVerdict());
    column->addWidget(makeChoices());
    m_effect = new EffectPlot;
    m_effect->setObjectName(QStringLiteral("effectPlot"));
    m_effect->setMinimumHeight(220);
    column->addWidget(m_effect, 1);
    m_day = new DayPlot;
    m_day->setObjectName(QStringLiteral("dayPlot"));
    m_day->setMinimumHeight(280);
    column->addWidget(m_day, 3);
    m_tally = parts::sentence(QStringLiteral("tally"));
    column->addWidget(m_tally);
    m_daysHeading = parts::heading(QStringLiteral("daysHeading"));
    column->addWidget(m_daysHeading);
    m_days = new ForestPlot;
    m_days->setObjectName(QStringLiteral("daysPlot"));
    column->addWidget(m_days);
    m_daysTable = parts::readingTable(QStringLiteral("daysTable"));
    column->addWidget(m_daysTable);
    m_detectable = parts::sentence(QStringLiteral("detectable"));
    column->addWidget(m_detectable);
    connect(m_day, &PlotView::readingActivated, this, &ResultView::runActivated);
    setContent(parts::scrolled(column));
}

ResultPage::~ResultPage() = default;

QWidget* ResultPage::makeVerdict()
{
    auto* panel = new QWidget;
    auto* row = new QHBoxLayout(panel);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(14);
    m_mark = new VerdictMark;
    row->addWidget(m_mark, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout;
    column->setSpacing(6);
    m_verdict = parts::sentence(QStringLiteral("verdict"));
    m_inUnits = parts::sentence(QStringLiteral("inUnits"));
    m_claimed = parts::sentence(QStringLiteral("claimed"));
    m_whatItWouldTake = parts::sentence(QStringLiteral("whatItWouldTake"));
    m_qualifiers = new QVBoxLayout;
    m_qualifiers->setSpacing(4);
    for (QLabel* label : {m_verdict, m_inUnits, m_claimed, m_whatItWouldTake})
        column->addWidget(label);
    column->addLayout(m_qualifiers);
    row->addLayout(column, 1);
    m_help = helpButton({}, tr("Verdict"));
    row->addWidget(m_help, 0, Qt::AlignTop);
    return panel;
}

QWidget* ResultPage::makeChoices()
{
    auto* panel = new QWidget;
    constexpr int kWide = 640; // the three in a row, in the longer language
    auto* turning = new TurningLayout(kWide, panel);
    turning->setContentsMargins(0, 0, 0, 0);
    const auto dress = [](QDoubleSpinBox* box, const char* name, double low, double high,
                          double step, int decimals) {
        box->setObjectName(QLatin1String(name));
        box->setRange(low, high);
        box->setSingleStep(step);
        box->setDecimals(decimals);
        box->setSuffix(kPerCent);
        return box;
    };
    m_margin = dress(new QDoubleSpinBox, "margin", kSmallestMargin_pct, kLargestMargin_pct, 0.1, 2);
    m_confidence = dress(new QDoubleSpinBox, "confidence", kLowestConfidence_pct,
                         kHighestConfidence_pct, 1.0, 1);
    m_claim = dress(new ClaimBox, "claim", kLowestClaim_pct, kHighestClaim_pct, 0.5, 2);
    m_claim->setSuffix({}); // its own text has the sign
    m_claimLabel = new QLabel;
    m_claimLabel->setBuddy(m_claim);
    m_marginLabel = new QLabel;
    m_marginLabel->setBuddy(m_margin);
    m_confidenceLabel = new QLabel;
    m_confidenceLabel->setBuddy(m_confidence);
    for (const auto& [label, box] :
         {std::pair(m_marginLabel, m_margin), std::pair(m_confidenceLabel, m_confidence),
          std::pair(m_claimLabel, m_claim)}) {
        auto* pair = new QHBoxLayout;
        pair->addWidget(label);
        pair->addWidget(box);
        pair->addStretch();
        turning->addLayout(pair);
    }
    for (QDoubleSpinBox* box : {m_margin, m_confidence, m_claim})
        connect(box, &QDoubleSpinBox::valueChanged, this, [this] {
            const double claim_pct = m_claim->value();
            emit optionsAsked(m_margin->value(), m_confidence->value() / 100.0,
                              claim_pct == 0.0 ? std::nullopt : std::optional(claim_pct));
        });
    return panel;
}

void ResultPage::refresh()
{
    const core::Analysis& analysis = result()->analysis;
    const Words words(analysis, units());
    m_mark->show(analysis.verdict.cls, theme());
    parts::enlarge(*m_verdict, 1.45, true);
    parts::setSentence(*m_verdict, words.verdict());
    setHelpTopic(*m_verdict, helpTopic(analysis.verdict.cls));
    setHelpTopic(*m_help, helpTopic(analysis.verdict.cls));
    parts::setSentence(*m_inUnits, words.inUnits());
    const std::string atLeast = wording::atLeastSentence(words.language(), analysis);
    const std::string claimed = wording::claimSentence(words.language(), analysis);
    parts::setSentence(*m_claimed,
                       shown(atLeast + (atLeast.empty() || claimed.empty() ? "" : " ") + claimed));
    parts::setSentence(*m_whatItWouldTake, words.whatItWouldTake());
    showQualifiers();
    showChoices();
    m_effect->setVisible(analysis.headline.has_value());
    m_effect->setTheme(theme());
    m_effect->setLocale(units().locale);
    m_effect->show(analysis, words);
    m_day->setTheme(theme());
    m_day->setLocale(units().locale);
    m_day->show(*result(), words);
    QStringList below{words.tally()};
    for (const core::Note& note : analysis.notes)
        below << words.note(note);
    parts::setSentence(*m_tally, below.join(u'\n'));
    showDays();
    parts::setSentence(*m_detectable, analysis.detectable ? words.detectable() : QString());
}

void ResultPage::showChoices()
{
    const core::AnalysisOptions& options = result()->analysis.options;
    m_marginLabel->setText(tr("&Margin: I care about"));
    m_confidenceLabel->setText(tr("&Confidence"));
    m_margin->setAccessibleName(tr("Margin, the smallest effect that you care about, in per cent"));
    m_confidence->setAccessibleName(tr("Confidence of the interval, in per cent"));
    m_claimLabel->setText(tr("C&laim (− is less)"));
    m_claim->setAccessibleName(tr("What someone says the device does, in per cent, minus is less"));
    m_claim->setToolTip(tr("What a seller or a friend says: −5 for five per cent less. The verdict "
                           "says whether the runs bear it out."));
    const QSignalBlocker quietMargin(m_margin);
    const QSignalBlocker quietConfidence(m_confidence);
    const QSignalBlocker quietClaim(m_claim);
    for (QDoubleSpinBox* box : {m_margin, m_confidence, m_claim})
        box->setLocale(units().locale);
    m_margin->setValue(options.margin_pct);
    m_confidence->setValue(100.0 * options.confidence);
    m_claim->setValue(options.claim_pct.value_or(0.0));
}

/// Each day for itself, as a picture and in numbers; only where several days can be told.
void ResultPage::showDays()
{
    const core::Analysis& analysis = result()->analysis;
    const Words words(analysis, units());
    const std::vector<CompanionRow> rows = dayRows(*result(), words);
    for (QWidget* part : std::initializer_list<QWidget*>{m_daysHeading, m_days, m_daysTable})
        part->setVisible(!rows.empty());
    if (rows.empty())
        return;
    const NumberWords& numbers = words.numbers();
    parts::enlarge(*m_daysHeading, 1.25, true);
    m_daysHeading->setText(tr("Each day for itself"));
    m_days->setTheme(theme());
    m_days->setLocale(units().locale);
    m_days->show({m_daysHeading->text(), words.check(wording::CheckKind::days),
                  forestAxis(analysis, words), forestRows(rows, words),
                  analysis.verdict.margin_pct});
    m_daysTable->clear();
    m_daysTable->setColumnCount(4);
    m_daysTable->setRowCount(static_cast<int>(rows.size()));
    m_daysTable->setHorizontalHeaderLabels(
        {tr("day"), tr("pairs"), tr("effect"),
         tr("%1 interval").arg(numbers.percent(analysis.options.confidence))});
    m_daysTable->setAccessibleName(tr("Each day in numbers"));
    int line = 0;
    for (const CompanionRow& row : rows) {
        const int decimals = NumberWords::decimalsOfRange(*row.low_log, *row.high_log);
        parts::setCell(*m_daysTable, line, 0, row.name);
        parts::setCell(*m_daysTable, line, 1, numbers.fixed(row.pairs, 0), true);
        parts::setCell(*m_daysTable, line, 2, units().percentFromLog(*row.effect_log, decimals),
                       true);
        parts::setCell(*m_daysTable, line, 3,
                       numbers.signedRange(*row.low_log, *row.high_log, decimals), true);
        ++line;
    }
    parts::fitToRows(*m_daysTable);
}

void ResultPage::showQualifiers()
{
    parts::clear(*m_qualifiers);
    const core::Analysis& analysis = result()->analysis;
    const Words words(analysis, units());
    if (!result()->spoiled.empty())
        m_qualifiers->addWidget(
            reservation(QStringLiteral("spoiledRuns"),
                        shown(wording::spoiledRunsSentence(words.language(), result()->spoiled)),
                        QStringLiteral("rules"), tr("Spoiled runs count")));
    if (analysis.checks.days.state == core::CheckState::fails) // beside the verdict, not on a page
        m_qualifiers->addWidget(
            reservation(QStringLiteral("daysDisagree"), words.check(wording::CheckKind::days),
                        helpTopic(wording::CheckKind::days),
                        shown(wording::checkName(words.language(), wording::CheckKind::days))));
    auto* more = new QWidget;
    auto* moreColumn = new QVBoxLayout(more);
    moreColumn->setContentsMargins(0, 0, 0, 0);
    std::size_t shownSoFar = 0;
    for (const core::Qualifier qualifier : analysis.verdict.qualifiers) {
        QWidget* row = reservation(QStringLiteral("qualifier"), words.qualifier(qualifier),
                                   helpTopic(qualifier),
                                   shown(wording::qualifierName(words.language(), qualifier)));
        if (shownSoFar++ < wording::kQualifiersShown)
            m_qualifiers->addWidget(row);
        else
            moreColumn->addWidget(row);
    }
    if (shownSoFar <= wording::kQualifiersShown) {
        delete more;
        return;
    }
    auto* unfold = new QToolButton;
    unfold->setObjectName(QStringLiteral("moreQualifiers"));
    unfold->setText(
        tr("%n more…", nullptr, static_cast<int>(shownSoFar - wording::kQualifiersShown)));
    unfold->setAutoRaise(true);
    unfold->setCheckable(true);
    more->hide();
    connect(unfold, &QToolButton::toggled, more, &QWidget::setVisible);
    m_qualifiers->addWidget(unfold);
    m_qualifiers->addWidget(more);
}

/// A mark, the sentence, and the way to the handbook.
QWidget* ResultPage::reservation(const QString& objectName, const QString& sentence,
                                 const QString& topic, const QString& name)
{
    auto* row = new QWidget;
    row->setObjectName(objectName);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* mark = new CheckMark;
    mark->show(core::CheckState::note, theme());
    layout->addWidget(mark, 0, Qt::AlignTop);
    QLabel* text = parts::sentence(objectName + QStringLiteral("Text"));
    parts::setSentence(*text, sentence);
    layout->addWidget(text, 1);
    layout->addWidget(helpButton(topic, name), 0, Qt::AlignTop);
    setHelpTopic(*row, topic);
    return row;
}

} // namespace bothways::app
