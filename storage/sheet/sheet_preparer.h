// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/sheet/number_forms.h"
#include "storage/sheet/prepared_sheet.h"
#include "storage/sheet/sheet_layout.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace bothways::storage {

/// Makes the lines of a table records of ours: cell by cell, each by what its column means.
class SheetPreparer {
public:
    SheetPreparer(const Table& table, const SheetLayout& layout, const SheetOptions& options,
                  std::string name)
        : m_table(table),
          m_layout(layout),
          m_options(options),
          m_start(layout.find("start")),
          m_date(layout.find(kDateColumn))
    {
        m_sheet.name = std::move(name);
    }
    /// @param separator  of a text
    core::Result<PreparedSheet> prepare(char separator);

    /// A date of which nobody can tell the day from the month, as written.
    [[nodiscard]] const std::string& unclearDate() const { return m_unclearDate; }

private:
    void chooseColumns();
    void lookAtNumbers();
    std::optional<core::Error> settleDates();
    void findTitleDate();
    void takeLine(const Row& row);
    void takeBeyond(const Row& row);
    std::string cellFor(const LaidColumn& column, const Row& row);
    std::string numberFor(const LaidColumn& column, const Cell& cell);
    std::string lengthFor(const LaidColumn& column, const Cell& cell);
    std::string percentFor(const LaidColumn& column, const Cell& cell);
    std::string startFor(const Row& row);
    std::string dateFor(const Row& row);
    std::string marksFor(const Cell& cell);
    [[nodiscard]] std::optional<std::string> isoOf(const WrittenDate& date) const;
    void fault(const LaidColumn& column, core::Message message);
    void say();
    void sayHidden();

    const Table& m_table;
    const SheetLayout& m_layout;
    const SheetOptions& m_options;
    const LaidColumn *m_start, *m_date;
    PreparedSheet m_sheet;
    std::vector<const LaidColumn*> m_columns; ///< of the records
    std::vector<NumberSigns> m_signs;         ///< of each of m_columns
    std::vector<bool> m_minutesFirst;         ///< of each: "3:33" is minutes and seconds
    char m_decimal = '.';
    DateOrder m_order = DateOrder::unknown;
    bool m_orderFound = false; ///< some date needed it
    std::string m_unclearDate;
    std::string m_lastDate; ///< of the line above
    bool m_dateCarried = false;
    int m_line = 0;
    std::string m_grouped, m_groupedAs; ///< the first number with signs between thousands
};

} // namespace bothways::storage
