// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"
#include "storage/bytes/csv.h"
#include "storage/sheet/run_sheet.h"

#include <cstddef>
#include <string>
#include <vector>

/// An ordinary spreadsheet made what our own sheets are: columns of ours, numbers in C form, dates
/// and times as ISO 8601 has them. SheetReader goes on from here.
namespace bothways::storage {

struct PreparedColumn {
    std::string name;      ///< ours, canonical; of one's own: its own, canonical
    std::string asWritten; ///< in the sheet
};

/// What was found wrong before the runs were read.
struct PreparedFault {
    int line = 0;
    std::string column;     ///< as PreparedColumn has its name; empty: of one without a name
    std::size_t number = 0; ///< then: from 0
    core::Message message;
    std::string shown = {}; ///< the column as the sheet calls it, where it is another's name
};

struct PreparedSheet {
    std::string name; ///< of the file, with that of the sheet, for messages
    int headerLine = 1;
    std::vector<PreparedColumn> columns;
    std::vector<csv::Record> records; ///< a field for each column
    std::vector<PreparedFault> faults;
    SheetDialect dialect;
    std::string titleDate;            ///< YYYY-MM-DD: the only one above the header
    int titleLine = 0;                ///< where it stands
    std::vector<core::Message> found; ///< see RunSheet::found
    /// Something was passed over, renamed or rewritten; else the sheet is one of ours.
    bool adapted = false;
    bool consumptionUnclear = false;  ///< a fault says so
    std::vector<std::string> lacking; ///< see RunSheet::lacking
};

} // namespace bothways::storage
