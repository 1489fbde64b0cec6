// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/typed_number.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// A line of text taken apart: into cells, pairs of name and value, or the names of a header.
namespace bothways::storage {

class LineWords {
public:
    enum class Is {
        nothing, ///< blank, or a comment without a word
        words,   ///< no number: a header perhaps
        cells,   ///< a number at least
        pairs,   ///< "rpm=2950 w=612", "rpm: 2950 1/min, w: 612"
        garbage  ///< bytes that are no text
    };
    struct Cell {
        std::string_view text;
        std::optional<TypedNumber> number;
    };
    struct Pair {
        std::string_view name, text, unit;
        std::optional<TypedNumber> number;
    };

    /// What it is; the views are of `line`.
    Is read(std::string_view line);
    /// Takes apart a line of cells so that there are so many. @return  false: it cannot be
    bool readAs(std::string_view line, std::size_t cells);
    [[nodiscard]] const std::vector<Cell>& cells() const { return m_cells; }
    [[nodiscard]] const std::vector<Pair>& pairs() const { return m_pairs; }
    /// The names of a line of words, no two alike.
    [[nodiscard]] const std::vector<std::string>& header() const { return m_header; }
    [[nodiscard]] static std::string joined(const std::vector<std::string>& names);

private:
    bool readPairs(std::string_view line);
    void readCells(std::string_view line, char separator, bool decimalComma);
    void readHeader(std::string_view line);
    [[nodiscard]] bool anyNumber() const;

    std::vector<Cell> m_cells;
    std::vector<Pair> m_pairs;
    std::vector<std::string> m_header;
};

} // namespace bothways::storage
