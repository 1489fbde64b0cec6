// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

/// Smallest and largest values of long recordings, fast enough to draw while the mouse moves.
namespace bothways::core {

struct MinMax {
    double minimum = 0.0, maximum = 0.0;
    friend bool operator==(const MinMax&, const MinMax&) = default;
};

/// Minimum and maximum over any stretch of a channel, exact, in logarithmic time: blocks of 64
/// values, then eight blocks to one, and so on up. Takes about 1/28 of the values' memory.
///
/// Not-a-number is no value: it is left out. Reads the values it was made from; they must outlive
/// it and stay as they are. Checked against brute force:
/// tests/core/recording/trace_pyramid_test.cpp.
class TracePyramid {
public:
    TracePyramid() = default;
    explicit TracePyramid(std::span<const double> values);

    [[nodiscard]] std::size_t size() const { return m_values.size(); }
    /// Over values [first, last); empty where there is no number in it.
    /// @param last  at most size()
    [[nodiscard]] std::optional<MinMax> over(std::size_t first, std::size_t last) const;

private:
    std::span<const double> m_values;
    std::vector<std::vector<MinMax>> m_levels;
};

/// What one pixel column of a plot shows of a channel: every sample in it is between `minimum` and
/// `maximum`, and both are attained, so that a spike of one sample never vanishes. Drawn as
/// first - minimum - maximum - last, the line is the same to the pixel as that through all samples.
struct TraceColumn {
    std::size_t first = 0, last = 0; ///< samples [first, last)
    double minimum = 0.0, maximum = 0.0;
};

struct PlacedColumn {
    std::size_t column = 0;
    TraceColumn what;
};

/// The columns of a picture that shows [from, to) in `count` columns of equal width; columns
/// without a sample, or with none but not-a-number, are left out.
///
/// @param places   of the samples on the axis (times, or distances), never falling
/// @param pyramid  of the samples' values
/// @param from,to  from < to
[[nodiscard]] std::vector<PlacedColumn> columnsOf(std::span<const double> places,
                                                  const TracePyramid& pyramid, double from,
                                                  double to, std::size_t count);

/// Samples [first, last) whose places lie in [from, to).
struct SampleRange {
    std::size_t first = 0, last = 0;
};
[[nodiscard]] SampleRange samplesBetween(std::span<const double> places, double from, double to);

} // namespace bothways::core
