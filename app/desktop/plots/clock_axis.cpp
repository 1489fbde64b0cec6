// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/clock_axis.h"

#include "core/study/clock.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace bothways::app {
namespace {

constexpr double kUsPerHour = 3.6e9;
constexpr double kLongGap_h = 6.0; // begins a new day: method, section 4
constexpr double kSpace_h = 0.4;   // shown in place of a long gap

class ClockTicker final : public QCPAxisTicker {
public:
    explicit ClockTicker(const ClockAxis& axis) : m_axis(axis) { setTickCount(7); }

protected:
    double getTickStep(const QCPRange& range) override
    {
        constexpr std::array kSteps_min{1.0, 2.0, 5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 180.0};
        const double wanted = range.size() * 60.0 / mTickCount;
        const auto step = std::lower_bound(kSteps_min.begin(), kSteps_min.end(), wanted);
        return (step == kSteps_min.end() ? kSteps_min.back() : *step) / 60.0;
    }

    QVector<double> createTickVector(double step, const QCPRange& range) override
    {
        QVector<double> ticks;
        for (const ClockAxis::Day& day : m_axis.days()) {
            const double from = std::max(range.lower, day.from - kSpace_h / 2.0);
            const double to = std::min(range.upper, day.to + kSpace_h / 2.0);
            if (from > to)
                continue;
            const double midnight = m_axis.sinceMidnight_h(day);
            for (double k = std::ceil((midnight + from) / step); k * step - midnight <= to; ++k)
                ticks.append(k * step - midnight);
        }
        return ticks;
    }

    QString getTickLabel(double tick, const QLocale&, QChar, int) override
    {
        return m_axis.clock(tick);
    }

private:
    ClockAxis m_axis;
};

} // namespace

RunSpan spanOf(const core::Study& study, const core::Run& run)
{
    const std::int64_t first = study.runs.empty() ? 0 : study.runs.front().start.us;
    const double from = static_cast<double>(run.start.us - first) / kUsPerHour;
    const double mid = static_cast<double>(core::midTime_us(run) - first) / kUsPerHour;
    return {from, mid, mid + (mid - from)};
}

ClockAxis::ClockAxis(const core::Study& study)
{
    if (study.runs.empty())
        return;
    m_first = study.runs.front().start;
    double cut = 0.0;
    double last = 0.0;
    m_days.push_back({0.0, 0.0, 0.0});
    for (const core::Run& run : study.runs) {
        const RunSpan span = spanOf(study, run);
        if (span.from_h - last > kLongGap_h) {
            cut = span.from_h - m_days.back().to - kSpace_h;
            m_days.push_back({span.from_h - cut, span.to_h - cut, cut});
        }
        m_days.back().to = std::max(m_days.back().to, span.to_h - cut);
        last = span.from_h;
    }
}

double ClockAxis::place(double time_h) const
{
    for (auto day = m_days.rbegin(); day != m_days.rend(); ++day)
        if (time_h - day->cut_h >= day->from - kSpace_h / 2.0)
            return time_h - day->cut_h;
    return time_h;
}

double ClockAxis::time_h(double place) const
{
    for (auto day = m_days.rbegin(); day != m_days.rend(); ++day)
        if (place >= day->from - kSpace_h / 2.0)
            return place + day->cut_h;
    return place;
}

double ClockAxis::sinceMidnight_h(const Day& day) const
{
    const std::int64_t local =
        m_first.us + std::int64_t{60'000'000} * m_first.utc_offset_min.value_or(0);
    return std::fmod(
        static_cast<double>(local % std::int64_t{86'400'000'000}) / kUsPerHour + day.cut_h, 24.0);
}

QCPRange ClockAxis::whole() const
{
    const double to = m_days.empty() ? 1.0 : m_days.back().to;
    const double air = std::max(0.03 * to, 0.05);
    return {-air, to + air};
}

QString ClockAxis::clock(double place) const
{
    core::Instant instant = m_first;
    instant.us +=
        static_cast<std::int64_t>(std::llround(time_h(place) * kUsPerHour / 6e7) * 60'000'000);
    return QString::fromStdString(core::formatTimeOfDay(instant, false));
}

QSharedPointer<QCPAxisTicker> ClockAxis::ticker() const
{
    return QSharedPointer<ClockTicker>::create(*this);
}

} // namespace bothways::app
