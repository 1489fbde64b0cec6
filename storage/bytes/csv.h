// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/text_parts.h"

#include <cstddef>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Comma-separated values as in RFC 4180, with the freedoms that spreadsheets take: another
/// separator, any line end, comment lines, blanks around a field.
namespace bothways::storage::csv {

struct Field {
    std::string text;    ///< blanks around an unquoted field are dropped; within quotes they stay
    bool quoted = false; ///< so that an empty text in quotes can be told from nothing
};

enum class RecordFault { none, quoteNeverCloses, textAfterQuote, tooManyFields };

struct Record {
    int line = 0; ///< where it starts, from 1; line breaks within quotes and comments count
    std::size_t begin = 0; ///< byte of the text where it starts
    std::vector<Field> fields;
    RecordFault fault = RecordFault::none;
    std::size_t faultField = 0; ///< where the fault is, from 0
};

/// Whether lines that begin with '#' are for people alone.
enum class Comments { skipped, kept };

/// Reads record after record. Skips comment lines (first character '#') and lines of blanks.
/// A quote inside an unquoted field is an ordinary character. The text must outlive the reader.
class Reader {
public:
    /// @param text       without a byte order mark
    /// @param separator  ',', ';' or tab
    /// @param mostFields  of a record; the rest of a longer one's line is passed over
    Reader(std::string_view text, char separator,
           std::size_t mostFields = std::numeric_limits<std::size_t>::max(),
           Comments comments = Comments::skipped)
        : m_text(text), m_mostFields(mostFields), m_separator(separator), m_comments(comments)
    {
    }
    /// The next record; nothing at the end.
    std::optional<Record> next();

private:
    bool skipCommentOrBlankLine();
    bool takeLineEnd();
    void takeField(Record& record);
    void takeQuoted(Record& record, Field& field);
    [[nodiscard]] bool atFieldEnd() const;
    [[nodiscard]] bool atLineEnd() const;

    std::string_view m_text;
    std::size_t m_mostFields;
    std::size_t m_at = 0;
    int m_line = 1;
    char m_separator;
    Comments m_comments;
};

/// For whom a file is written.
enum class Form {
    plain,         ///< for programs: what was given comes back byte for byte
    forSpreadsheet ///< no text is taken for a formula
};
/// `text` with an apostrophe before it where a spreadsheet would take it for a formula: it begins
/// with =, +, -, @ (after blanks, and in full width, too), a tab or a line break. Numbers are for
/// the caller to leave alone.
[[nodiscard]] std::string guarded(std::string_view text);

/// Appends `text` as a field of comma-separated values: in quotes where a reader would else see
/// something different.
void appendField(std::string& out, std::string_view text, bool firstOfLine);

using core::trimmed;
using core::trimmedLines;
/// Nothing but blanks, tabs and line breaks.
[[nodiscard]] bool isBlankText(std::string_view text);

} // namespace bothways::storage::csv
