// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "app/wording/sentences.h"
#include "core/study/study.h"

#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace CLI {
class App;
class Option;
} // namespace CLI

/// Options that several verbs share. Numbers are read without the locale, and refused with what was
/// expected.
namespace bothways::cli {

/// A number in an open or closed range; `expected` ends the sentence "'x' is no good; expected …".
struct NumberRange {
    double low;
    double high;
    bool withLow = true, withHigh = true;
    const char* expected;
};
inline constexpr double kNoLimit = std::numeric_limits<double>::infinity();
CLI::Option* addNumber(CLI::App& app, const std::string& option, std::optional<double>& value,
                       const NumberRange& range, const std::string& description);
CLI::Option* addWhole(CLI::App& app, const std::string& option, std::optional<std::uint64_t>& value,
                      std::uint64_t low, std::uint64_t high, const std::string& description);
CLI::Option* addUnit(CLI::App& app, std::optional<app::english::ShownUnit>& unit);

/// Properties of a study that the command line overrides for one call.
struct Overrides {
    std::vector<std::pair<std::string, std::string>> properties;
    /// @return  what setProperty() says about the first that is wrong
    [[nodiscard]] Outcome applyTo(core::StudyProperties& properties) const;
    /// The last value given to a property; nothing: it was not given.
    [[nodiscard]] std::optional<std::string> given(std::string_view property) const;
};
/// --date, --baseline, --limit NAME=VALUE, --set NAME=VALUE
void addSheetOverrides(CLI::App& app, Overrides& overrides);
/// The same, with --margin, --confidence, --max-gap
void addAnalysisOverrides(CLI::App& app, Overrides& overrides);

/// "name=value" in two.
[[nodiscard]] Result<std::pair<std::string, std::string>> splitAssignment(const std::string& text);

/// What the verb does once its options are read; puts the outcome into the context.
void onCall(CLI::App& verb, Context& context, std::function<Outcome()> action);

} // namespace bothways::cli
