// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/watching/running_median.h"

#include <cmath>

namespace bothways::core {

void RunningMedian::add(double number)
{
    constexpr double kClassesPerDoubling = 64.0;
    if (!(number > 0.0) || !std::isfinite(number))
        return;
    const int place = static_cast<int>(std::floor(std::log2(number) * kClassesPerDoubling));
    Class& its = m_classes[place];
    ++its.count;
    its.sum += number;
    ++m_count;
}

double RunningMedian::at(std::size_t place) const
{
    std::size_t below = 0;
    for (const auto& [key, its] : m_classes) {
        below += its.count;
        if (place < below)
            return its.sum / static_cast<double>(its.count);
    }
    return 0.0;
}

double RunningMedian::median() const
{
    if (m_count == 0)
        return 0.0;
    const double upper = at(m_count / 2);
    return m_count % 2 == 1 ? upper : (at(m_count / 2 - 1) + upper) / 2.0;
}

} // namespace bothways::core
