// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/sliding_level.h"

#include "core/statistics/events.h"
#include "core/statistics/robust.h"

#include <algorithm>
#include <functional>
#include <limits>
#include <numeric>

namespace bothways::core {
namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

/// Mean of the largest value that is not `beyond` and the smallest that is: the middle two of a
/// window of which exactly half are beyond.
template <class Beyond>
double meanOfMiddle(std::span<const double> window, Beyond beyond, bool beyondIsAbove)
{
    double below = -kInfinite, above = kInfinite;
    for (const double value : window) {
        if (beyond(value) == beyondIsAbove)
            above = std::min(above, value);
        else
            below = std::max(below, value);
    }
    return std::midpoint(below, above);
}

/// How many values of a sliding window are beyond a bound, and what that says of its median.
template <class Beyond>
class ShareBeyond {
public:
    ShareBeyond(std::span<const double> values, Beyond beyond, bool above)
        : m_values(values), m_beyond(beyond), m_above(above)
    {
    }
    void restart(std::size_t begin, std::size_t end)
    {
        m_begin = begin;
        m_end = end;
        m_count = 0;
        for (std::size_t i = begin; i < end; ++i)
            m_count += m_beyond(m_values[i]);
    }
    void slideTo(std::size_t begin, std::size_t end)
    {
        for (; m_end < end; ++m_end)
            m_count += m_beyond(m_values[m_end]);
        for (; m_begin < begin; ++m_begin)
            m_count -= m_beyond(m_values[m_begin]);
    }
    [[nodiscard]] bool medianIsBeyond() const
    {
        const std::size_t size = m_end - m_begin;
        if (2 * m_count != size)
            return 2 * m_count > size;
        return m_beyond(meanOfMiddle(m_values.subspan(m_begin, size), m_beyond, m_above));
    }

private:
    std::span<const double> m_values;
    Beyond m_beyond;
    bool m_above;
    std::size_t m_begin = 0, m_end = 0, m_count = 0;
};

} // namespace

SlidingLevel::SlidingLevel(std::span<const double> time_s, std::span<const double> values,
                           double halfWidth_s)
    : m_time(time_s), m_values(values), m_half_s(halfWidth_s + kTimeGrace_s)
{
}

SlidingLevel::Window SlidingLevel::windowAt(std::size_t sample) const
{
    const double time_s = m_time[sample];
    const auto first = std::lower_bound(m_time.begin(), m_time.end(), time_s - m_half_s);
    const auto last = std::upper_bound(first, m_time.end(), time_s + m_half_s);
    return {static_cast<std::size_t>(first - m_time.begin()),
            static_cast<std::size_t>(last - m_time.begin())};
}

void SlidingLevel::advance(Window& window, std::size_t sample) const
{
    while (window.end < m_time.size() && m_time[window.end] <= m_time[sample] + m_half_s)
        ++window.end;
    while (m_time[window.begin] < m_time[sample] - m_half_s)
        ++window.begin;
}

double SlidingLevel::at(std::size_t sample) const
{
    const Window window = windowAt(sample);
    return median(m_values.subspan(window.begin, window.size()));
}

std::vector<char> SlidingLevel::outside(double low, double high) const
{
    std::vector<char> result(m_values.size());
    ShareBeyond above(
        m_values, [high](double value) { return value >= high; }, true);
    ShareBeyond below(
        m_values, [low](double value) { return value <= low; }, false);
    Window window{0, 0};
    for (std::size_t i = 0; i < m_values.size(); ++i) {
        advance(window, i);
        above.slideTo(window.begin, window.end);
        below.slideTo(window.begin, window.end);
        result[i] = above.medianIsBeyond() || below.medianIsBeyond();
    }
    return result;
}

template <class Better>
double SlidingLevel::extreme(std::size_t first, std::size_t last, Better better) const
{
    // Blocks of samples are visited in a scattered order: on a slope each sample in turn would be
    // the best so far, and each new best costs a look through its window. Scattered, the best
    // blocks come early and the others are passed over.
    constexpr std::size_t kBlock = 512;
    const std::size_t blocks = (last - first) / kBlock + 1;
    std::size_t stride = blocks * 618 / 1000 | 1;
    while (std::gcd(stride, blocks) != 1)
        ++stride;
    const bool seeksLargest = better(1.0, 0.0);
    double best = at(first);
    for (std::size_t n = 0, block = 0; n < blocks; ++n, block = (block + stride) % blocks) {
        const std::size_t from = first + block * kBlock;
        const std::size_t until = std::min(from + kBlock, last + 1);
        Window window = windowAt(from);
        const auto beyond = [&](double value) { return better(value, best); };
        ShareBeyond share(m_values, beyond, seeksLargest);
        share.restart(window.begin, window.end);
        for (std::size_t i = from; i < until; ++i) {
            advance(window, i);
            share.slideTo(window.begin, window.end);
            if (!share.medianIsBeyond())
                continue;
            best = median(m_values.subspan(window.begin, window.size()));
            share.restart(window.begin, window.end);
        }
    }
    return best;
}

double SlidingLevel::largest(std::size_t first, std::size_t last) const
{
    return extreme(first, last, std::greater<>());
}

double SlidingLevel::smallest(std::size_t first, std::size_t last) const
{
    return extreme(first, last, std::less<>());
}

} // namespace bothways::core
