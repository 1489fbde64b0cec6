// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/rig_trial.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/said.h"
#include "app/desktop/watch/alarm_sounds.h"
#include "app/desktop/watch/live_words.h"
#include "app/wording/findings.h"
#include "core/screening/rule_channels.h"

#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include <fmt/ranges.h>

#include <algorithm>

namespace bothways::app {
namespace {

constexpr int kTrialLook_ms = 250;
constexpr double kRateOver_s = 5.0;
constexpr double kMeanOver_s = 1.0;

} // namespace

RigTrial::RigTrial(const UnitsShown& units, QWidget* parent) : QWidget(parent), m_units(units)
{
    setObjectName("rigTrial");
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    m_instruments = parts::sentence("trialInstruments");
    m_table = parts::readingTable("trialChannels");
    m_table->setAccessibleName(tr("What is read"));
    m_table->setColumnCount(columns);
    m_table->setHorizontalHeaderLabels(
        {tr("Channel"), tr("Value"), tr("per second"), tr("Age"), tr("Rules that read it")});
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setSectionResizeMode(rulesColumn, QHeaderView::Stretch);
    m_table->setMinimumHeight(fontMetrics().height() * 7);
    m_lacking = parts::sentence("trialLacking");
    box->addWidget(m_instruments);
    box->addWidget(m_table, 1);
    box->addWidget(m_lacking);
    connect(&m_looking, &QTimer::timeout, this, &RigTrial::look);
}

RigTrial::~RigTrial() = default;

core::Outcome RigTrial::start(const storage::Rig& rig)
{
    stop();
    auto reader = storage::RigReader::start(rig);
    if (!reader)
        return reader.error();
    m_reader.emplace(std::move(reader).take());
    m_rig = rig;
    m_channels.clear();
    m_seen.clear();
    m_table->setRowCount(0);
    m_looking.start(kTrialLook_ms);
    look();
    return core::Done{};
}

void RigTrial::stop()
{
    m_looking.stop();
    m_reader.reset();
}

void RigTrial::look()
{
    if (!m_reader)
        return;
    std::vector<storage::Reading> readings;
    m_reader->take(readings);
    m_channels = m_reader->channels();
    const double now_s = m_reader->clock_s();
    for (const storage::Reading& reading : readings)
        m_seen[reading.channel].last.emplace_back(reading.time_s, reading.value());
    for (auto& [channel, seen] : m_seen)
        while (seen.last.size() > 1 && seen.last.front().first < now_s - kRateOver_s)
            seen.last.pop_front();
    QStringList states;
    const auto instruments = m_reader->states();
    for (std::size_t i = 0; i < instruments.size() && i < m_rig.instruments.size(); ++i) {
        QString words =
            LiveWords::instrument(m_rig.instruments[i].name, instruments[i], now_s, m_units);
        if (instruments[i].garbage_lines > 0)
            words += tr(", %n line(s) could not be read", nullptr,
                        static_cast<int>(instruments[i].garbage_lines));
        states += words;
    }
    parts::setSentence(*m_instruments, states.join(u'\n'));
    showChannels();
    sayWhatIsLacking();
    emit looked();
}

void RigTrial::showChannels()
{
    const double now_s = m_reader->clock_s();
    m_table->setRowCount(static_cast<int>(m_channels.size()));
    for (std::size_t i = 0; i < m_channels.size(); ++i) {
        const int row = static_cast<int>(i);
        const storage::RigChannel& channel = m_channels[i].channel;
        const auto& last = m_seen[static_cast<std::uint32_t>(i)].last;
        QString name = nameShown(channel.name.empty() ? channel.source : channel.name);
        if (m_channels[i].derived)
            name = tr("%1 (derived)").arg(name);
        parts::setCell(*m_table, row, channelColumn, name);
        QString value(QChar(0x2013)), rate = value, age = value;
        if (!last.empty()) {
            const double read = last.back().second * channel.factor + channel.offset;
            value = QString("%1 %2").arg(m_units.number(read, 2), nameShown(channel.unit));
            rate = m_units.number(
                static_cast<double>(last.size()) / std::clamp(now_s, 1.0, kRateOver_s), 1);
            age = tr("%1 s").arg(m_units.number(std::max(0.0, now_s - last.back().first), 1));
        }
        parts::setCell(*m_table, row, valueColumn, value.trimmed(), true);
        parts::setCell(*m_table, row, rateColumn, rate, true);
        parts::setCell(*m_table, row, ageColumn, age, true);
        QStringList rules;
        for (const core::Rule rule : core::rulesThatRead(channel.name))
            rules += shown(wording::ruleName(m_units.language, rule));
        parts::setCell(*m_table, row, rulesColumn,
                       rules.isEmpty() ? tr("none: it is recorded only") : rules.join(", "));
    }
}

void RigTrial::sayWhatIsLacking()
{
    std::vector<std::string> names;
    for (std::size_t i = 0; i < m_channels.size(); ++i)
        if (!m_seen[static_cast<std::uint32_t>(i)].last.empty())
            names.push_back(m_channels[i].channel.name);
    QStringList lines;
    QStringList lacking;
    for (const core::RuleLack& lack : core::rulesLacking(names))
        lacking += tr("%1 (%2)").arg(
            shown(wording::ruleName(m_units.language, lack.rule)),
            QString::fromStdString(fmt::format("{}", fmt::join(lack.channels, ", "))));
    if (!lacking.isEmpty())
        lines += tr("Rules that lack a channel: %1.").arg(lacking.join(", "));
    lines +=
        AlarmSounds::hasDevice()
            ? QString()
            : tr("This computer has no sound device: alarms are seen, and it beeps if it can.");
    lines.removeAll(QString());
    parts::setSentence(*m_lacking, lines.join(u'\n'));
}

QString RigTrial::words() const
{
    return m_lacking->text();
}

std::vector<storage::ReadChannel> RigTrial::channels() const
{
    return m_channels;
}

std::optional<double> RigTrial::raw(std::uint32_t instrument, const std::string& source) const
{
    for (std::size_t i = 0; i < m_channels.size(); ++i) {
        if (m_channels[i].instrument != instrument || m_channels[i].channel.source != source)
            continue;
        const auto seen = m_seen.find(static_cast<std::uint32_t>(i));
        if (seen == m_seen.end() || seen->second.last.empty())
            return std::nullopt;
        double sum = 0.0;
        int count = 0;
        const double from_s = seen->second.last.back().first - kMeanOver_s;
        for (const auto& [time_s, value] : seen->second.last)
            if (time_s > from_s) {
                sum += value;
                ++count;
            }
        return sum / count;
    }
    return std::nullopt;
}

} // namespace bothways::app
