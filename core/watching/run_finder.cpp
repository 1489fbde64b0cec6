// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/watching/run_finder.h"

#include "core/recording/mark_words.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bothways::core {

RunFinder::RunFinder(const RunsBy& by, std::optional<double> target_kmh,
                     std::vector<std::string> directions)
    : m_by(by), m_directions(std::move(directions))
{
    if (by.way == RunsBy::Way::position && by.gates)
        m_gates.emplace(*by.gates);
    setStudy(target_kmh, m_directions);
}

void RunFinder::setStudy(std::optional<double> target_kmh, std::vector<std::string> directions)
{
    m_directions = std::move(directions);
    const bool isSpeed = m_by.way == RunsBy::Way::speed && target_kmh && *target_kmh > 0.0;
    if (!isSpeed || m_begun_s || m_cruise.target_kmh == target_kmh)
        return;
    m_cruise.target_kmh = target_kmh;
    m_cruises_s.reset();
    m_held.emplace(m_cruise);
}

void RunFinder::begins(double at_s, std::optional<bool> outward)
{
    m_begun_s = at_s;
    m_found.push_back({FoundBound::What::begins, at_s, outward, false, {}, {}});
}

void RunFinder::ends(double at_s)
{
    if (!m_begun_s)
        return;
    if (at_s > *m_begun_s)
        m_found.push_back(
            {FoundBound::What::ends, at_s, {}, m_by.way == RunsBy::Way::marks, {}, {}});
    else
        wasNone();
    m_begun_s.reset();
}

void RunFinder::wasNone()
{
    m_found.push_back({FoundBound::What::wasNone, *m_begun_s, {}, false, {}, {}});
    m_begun_s.reset();
}

void RunFinder::mark(double at_s, std::string_view words)
{
    if (m_by.way != RunsBy::Way::marks || m_isFinished)
        return;
    auto bound = markOfRun(words, m_directions);
    if (!bound)
        return;
    ends(at_s);
    if (!bound->begins)
        return;
    m_begun_s = at_s;
    m_found.push_back({FoundBound::What::begins,
                       at_s,
                       {},
                       true,
                       std::move(bound->direction),
                       std::move(bound->rest)});
}

void RunFinder::speed(double time_s, double kmh)
{
    if (!m_held || m_isFinished)
        return;
    endCruise(m_held->pass(time_s, kmh));
    const double target_kmh = *m_cruise.target_kmh;
    if (std::abs(kmh - target_kmh) > target_kmh * kCruised_pct / 100.0)
        m_cruises_s.reset();
    else
        m_cruises_s = std::max(m_cruises_s.value_or(time_s), m_held->soFar()->from_s);
    if (!m_begun_s && m_cruises_s && time_s - *m_cruises_s >= kCruised_s) {
        m_heldFrom_s = m_held->soFar()->from_s;
        begins(time_s, std::nullopt);
    }
}

void RunFinder::passTime(double now_s)
{
    if (m_held && !m_isFinished)
        endCruise(m_held->passTime(now_s));
}

void RunFinder::finish(double last_s)
{
    if (m_held)
        endCruise(m_held->finish());
    else if (m_by.way == RunsBy::Way::marks)
        ends(last_s);
    if (m_begun_s)
        wasNone();
    m_isFinished = true;
}

void RunFinder::endCruise(const std::optional<CruiseKeeper::Held>& ended)
{
    const auto held = m_held->soFar();
    if (m_begun_s && ended)
        ends(ended->to_s);
    else if (m_begun_s && (!held || held->from_s != *m_heldFrom_s))
        wasNone(); // it was not held long enough
}

void RunFinder::latitude(double time_s, double deg)
{
    m_lat = {time_s, deg};
    takePosition();
}

void RunFinder::longitude(double time_s, double deg)
{
    m_lon = {time_s, deg};
    takePosition();
}

void RunFinder::takePosition()
{
    if (!m_gates || m_isFinished || !m_lat || !m_lon || m_lat->time_s != m_lon->time_s)
        return;
    const auto before = m_gates->open();
    const auto ended = m_gates->pass({m_lat->time_s, m_lat->deg, m_lon->deg});
    const auto now = m_gates->open();
    if (ended)
        ends(ended->to_s);
    else if (before && before != now && m_begun_s)
        wasNone(); // turned on the stretch, or it is not known where it was
    if (now && now != before)
        begins(now->since_s, now->outward);
}

bool RunFinder::isInDoubt() const
{
    return m_begun_s && m_held && m_held->isOutside();
}

std::vector<FoundBound> RunFinder::take()
{
    return std::exchange(m_found, {});
}

} // namespace bothways::core
