// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <map>

namespace bothways::core {

/// Median of positive numbers that come one by one, in memory that does not grow with their count:
/// they are counted in classes 1.1 % wide, and the median is the mean of its class. Numbers that
/// are alike (an even pace) give their own value.
class RunningMedian {
public:
    void add(double number); ///< what is not above 0 is left out
    [[nodiscard]] std::size_t count() const { return m_count; }
    [[nodiscard]] double median() const; ///< 0 without a number

private:
    struct Class {
        std::size_t count = 0;
        double sum = 0.0;
    };
    [[nodiscard]] double at(std::size_t place) const;
    std::map<int, Class> m_classes;
    std::size_t m_count = 0;
};

} // namespace bothways::core
