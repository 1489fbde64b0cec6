// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/output/markup.h"
#include "app/output/report_model.h"

/// What the parts of a report are put together with. Private to app/output.
namespace bothways::app::report {

/// Takes plain text and keeps it as rich text. What is empty adds nothing.
class Builder {
public:
    /// @param in  must outlive it
    explicit Builder(const Language& in) : m_in(in) {}
    void heading(std::string_view title, int level = 2)
    {
        m_parts.push_back(Heading{level, escaped(title)});
    }
    void paragraph(std::string_view sentence, Tone tone = Tone::plain)
    {
        if (!sentence.empty())
            m_parts.push_back(Paragraph{escaped(sentence), tone});
    }
    void bullets(const std::vector<std::string>& items)
    {
        if (items.empty())
            return;
        Bullets bullets;
        for (const std::string& item : items)
            bullets.items.push_back(escaped(item));
        m_parts.push_back(std::move(bullets));
    }
    /// What an arrowhead means is said where the picture has one.
    void figure(Picture picture, const std::string& caption)
    {
        if (picture.empty())
            return;
        const std::string whole =
            picture.goes_on
                ? m_in.say("{} {}##two sentences"_t, caption,
                           m_in.say("An arrowhead points to what is beyond the picture."_t))
                : caption;
        m_parts.push_back(Figure{std::move(picture), escaped(whole)});
    }
    void table(Table table)
    {
        if (!table.rows.empty())
            m_parts.push_back(std::move(table));
    }
    void append(std::vector<Part> parts)
    {
        for (Part& part : parts)
            m_parts.push_back(std::move(part));
    }
    std::vector<Part> take() && { return std::move(m_parts); }

private:
    const Language& m_in;
    std::vector<Part> m_parts;
};

/// Adds plain text as a row of rich text.
inline void addRow(Table& table, const std::vector<std::string>& cells,
                   RowTone tone = RowTone::plain)
{
    Row row{{}, tone};
    for (const std::string& cell : cells)
        row.cells.push_back(escaped(cell));
    table.rows.push_back(std::move(row));
}

// Parts of makeReport(), in report_annex.cpp.
void addFindings(Builder& page, const ReportInput& given);
void addSettings(Builder& page, const ReportInput& given);
void addHistory(const Language& in, Builder& page, const std::vector<std::string>& lines);

} // namespace bothways::app::report
