// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"
#include "storage/bytes/csv.h"
#include "storage/sheet/prepared_sheet.h"
#include "storage/sheet/run_columns.h"
#include "storage/sheet/run_rules.h"
#include "storage/sheet/run_sheet.h"

#include <initializer_list>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace bothways::storage {

/// Reads one run sheet; lives as long as that takes. Faults are gathered, nothing is given up at
/// the first one. sheet_reader.cpp has the sheet as a whole, sheet_line.cpp its lines.
class SheetReader {
public:
    SheetReader(std::string_view text, std::string_view name, const SheetOptions& options,
                const core::Study* existing)
        : m_text(text), m_name(name), m_options(options)
    {
        if (existing)
            m_existing = existing;
        m_spellings = Spellings::of(*m_existing);
    }

    /// Of an ordinary spreadsheet, which outlives the reader.
    SheetReader(const PreparedSheet& prepared, const SheetOptions& options,
                const core::Study* existing)
        : SheetReader({}, prepared.name, options, existing)
    {
        m_prepared = &prepared;
    }

    Result<RunSheet> read();
    /// After read(): whether the starts were times of day.
    [[nodiscard]] bool hadTimesOfDay() const { return m_timesOfDay.value_or(false); }

private:
    /// One column of the sheet at hand.
    struct Column {
        std::string name;      ///< canonical
        std::string asWritten; ///< in the header
    };

    // What is wrong with the whole.
    std::optional<core::Error> refuseWhole();
    core::Place placeIn(int line) const;
    core::Error inFile(int line, core::Message message) const;
    Result<RunSheet> failure();

    // The header.
    void chooseSeparator();
    void readHeader(const csv::Record& header);
    void checkHeader(int line);
    core::Message missing(std::string_view column) const;
    void requireOneOf(int line, std::initializer_list<std::string_view> names);
    [[nodiscard]] bool has(std::string_view column) const;

    // The lines.
    std::optional<core::Error> refuseWidth(const csv::Record& header) const;
    std::optional<core::Error> readRecords();
    std::optional<core::Error> takePrepared();
    void takePreparedFaults();
    void findDecimalComma();
    void readLine(const csv::Record& record);
    [[nodiscard]] std::string_view cell(std::string_view column) const;
    void fault(std::string_view column, core::Message message);
    void readCells(core::Run& run);
    void readRunNumber(core::Run& run);
    void readNumbers(core::Run& run);
    void readConsumption(core::Run& run);
    void readControlAlone(core::Run& run);
    void readGivenConsumption(core::Run& run);
    void readStatus(core::Run& run);
    void readStart(core::Run& run);
    void readExtras(core::Run& run);
    std::optional<GivenNumber> number(std::string_view column, const core::Message& expected);
    [[nodiscard]] std::string placeOf(const RunFault& wrong, const core::Run& run) const;

    // The runs together.
    void takeDate();
    [[nodiscard]] bool usesTitleDate() const;
    void renamePairMarks();
    void checkTogether();
    void findOwnColumns();

    struct Placed {
        int line;
        std::size_t column;
        core::Error error;
    };
    void place(int line, std::string_view column, core::Message message);
    void placeAt(int line, std::size_t column, core::Message message);

    std::string_view m_text;
    std::string m_name;
    const PreparedSheet* m_prepared = nullptr; ///< null: a text in our own form
    const SheetOptions& m_options;
    const core::Study m_empty;
    const core::Study* m_existing = &m_empty;
    Spellings m_spellings;

    RunSheet m_sheet;
    int m_headerLine = 1;
    std::vector<Column> m_columns;
    std::map<std::string, std::size_t, std::less<>> m_places;
    std::optional<core::ConsumptionUnit> m_unit;
    std::vector<csv::Record> m_records;
    const csv::Record* m_record = nullptr;
    std::set<std::string, std::less<>> m_faultyHere; ///< columns of m_record

    std::vector<core::Run> m_runs;
    std::vector<int> m_lines; ///< of each run
    std::optional<bool> m_timesOfDay;
    bool m_dateKnown = false;
    std::int64_t m_day_us = 0;
    std::optional<std::int64_t> m_lastTime_us;
    std::vector<Placed> m_faults;
};

} // namespace bothways::storage
