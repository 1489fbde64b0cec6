// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/line_parser.h"
#include "storage/instruments/line_splitter.h"

#include <fmt/format.h>

#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace bothways::tests {

/// A parser of lines that has all channels it asks for, and what came out as text:
/// "rpm=2950 w=612", a line each; "garbage" and "mark: words" where that is what it was.
class ParsedText {
public:
    using Make = std::function<std::unique_ptr<storage::LineParser>(storage::FindChannels)>;
    explicit ParsedText(const Make& make, bool inTheMiddle = false)
    {
        m_parser = make([this](std::string_view, std::string_view name, std::string_view unit) {
            m_names.emplace_back(name);
            m_units.emplace_back(unit);
            return std::vector<std::uint32_t>{static_cast<std::uint32_t>(m_names.size() - 1)};
        });
        m_splitter.begin(inTheMiddle);
    }
    void connectAgain() { m_splitter.begin(true); }
    void feed(std::string_view bytes)
    {
        m_splitter.feed(bytes,
                        [this](std::string_view line, bool suspect) { take(line, suspect); });
    }
    [[nodiscard]] std::string text() const
    {
        std::string all;
        for (const std::string& line : m_lines)
            all += line + "\n";
        return all;
    }
    [[nodiscard]] const std::vector<std::string>& lines() const { return m_lines; }
    [[nodiscard]] const std::vector<std::string>& names() const { return m_names; }
    [[nodiscard]] const std::vector<std::string>& units() const { return m_units; }
    [[nodiscard]] std::string notice() const { return m_parser->notice().english(); }
    [[nodiscard]] const storage::LineSplitter& splitter() const { return m_splitter; }
    [[nodiscard]] const storage::ParsedLine& last() const { return m_parsed; }

private:
    void take(std::string_view line, bool suspect)
    {
        m_parser->take(line, suspect, m_parsed);
        if (m_parsed.is == storage::ParsedLine::Is::garbage)
            m_lines.emplace_back("garbage");
        std::string said;
        for (const storage::ParsedValue& value : m_parsed.values)
            said += (said.empty() ? "" : " ") + m_names[value.channel] + "=" + shown(value.number);
        if (!m_parsed.mark.empty())
            said += (said.empty() ? "" : " ") + ("mark: " + m_parsed.mark);
        if (!said.empty())
            m_lines.push_back(said);
    }
    /// "2950/10^1": exactly what was kept.
    static std::string shown(const storage::TypedNumber& number)
    {
        if (number.decimals < 0)
            return fmt::format("~{}", number.odd);
        return number.decimals == 0 ? fmt::format("{}", number.integer)
                                    : fmt::format("{}e-{}", number.integer, number.decimals);
    }

    std::unique_ptr<storage::LineParser> m_parser;
    storage::LineSplitter m_splitter;
    storage::ParsedLine m_parsed;
    std::vector<std::string> m_lines, m_names, m_units;
};

} // namespace bothways::tests
