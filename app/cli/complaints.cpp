// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/complaints.h"

#include <CLI/CLI.hpp>

#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace bothways::cli {
namespace {

/// What stands in the places ({} in order) of a sentence that was said; nothing where it is
/// another sentence.
std::optional<std::vector<core::Value>> valuesIn(std::string_view said, std::string_view sentence)
{
    std::vector<core::Value> values;
    for (;;) {
        const std::size_t place = sentence.find("{}");
        if (place == std::string_view::npos)
            return said == sentence ? std::optional(std::move(values)) : std::nullopt;
        if (said.substr(0, place) != sentence.substr(0, place))
            return std::nullopt;
        said.remove_prefix(place);
        sentence.remove_prefix(place + 2);
        const std::string_view between = sentence.substr(0, sentence.find("{}"));
        // The last place takes what is left but the end: a value may hold the words between.
        const std::size_t end =
            between.size() == sentence.size()
                ? (said.ends_with(between) ? said.size() - between.size() : std::string_view::npos)
                : said.find(between);
        if (end == std::string_view::npos)
            return std::nullopt;
        values.emplace_back(said.substr(0, end));
        said.remove_prefix(end);
    }
}

/// By the parser's kind of error; the English is the parser's own.
constexpr std::array<std::pair<std::string_view, const char*>, 8> kComplaints{
    {{"RequiredError", "{} is required"_t.key()},
     {"RequiresError", "{} requires {}"_t.key()},
     {"ExcludesError", "{} excludes {}"_t.key()},
     {"ArgumentMismatch", "{}: {} required {} missing"_t.key()},
     {"ArgumentMismatch", "{}: At Most {} required but received {}"_t.key()},
     {"ArgumentMismatch", "{}: At least {} required but received {}"_t.key()},
     {"ConversionError", "Could not convert: {} = {}"_t.key()},
     {"ConversionError", "{}: Should be true/false or a number"_t.key()}}};

} // namespace

core::Message complaint(const CLI::ParseError& problem)
{
    const std::string said = problem.what();
    for (const auto& [kind, sentence] : kComplaints) {
        if (problem.get_name() != kind)
            continue;
        if (auto values = valuesIn(said, sentence)) {
            core::Message message;
            message.key = sentence;
            message.values = std::move(*values);
            return message;
        }
    }
    return core::Message::verbatim(said); // ours, said already: verbs check their values themselves
}

} // namespace bothways::cli
