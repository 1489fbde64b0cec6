// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "app/wording/units.h"
#include "core/study/study.h"
#include "storage/recordings/run_traces.h"
#include "storage/sheet/run_sheet.h"

#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace CLI {
class App;
class Option;
class Validator;
} // namespace CLI

/// Options that several verbs share. Numbers are read without the locale, and refused with what was
/// expected.
namespace bothways::cli {

/// A number in an open or closed range; `expected` ends the sentence "'x' is not …".
struct NumberRange {
    double low;
    double high;
    bool withLow = true, withHigh = true;
    core::Text<0> expected;
    std::string_view unit = {}; ///< "km", "km/h": miles and mph are taken, too
};
inline constexpr double kNoLimit = std::numeric_limits<double>::infinity();
// `in` outlives the parser: what is wrong is said while parsing.
CLI::Option* addNumber(const Language& in, CLI::App& app, const std::string& option,
                       std::optional<double>& value, const NumberRange& range,
                       core::Text<0> description);
CLI::Option* addWhole(const Language& in, CLI::App& app, const std::string& option,
                      std::optional<std::uint64_t>& value, std::uint64_t low, std::uint64_t high,
                      core::Text<0> description);
CLI::Option* addUnit(const Language& in, CLI::App& app,
                     std::optional<app::wording::ShownUnit>& unit);
/// The words of which one must be given, as they are typed in any language.
[[nodiscard]] CLI::Validator oneOf(const Language& in, const std::vector<std::string>& words);

/// The end of a verb's help: an example or more, a line each, and words on it.
void addFooter(const Language& in, CLI::App& app, const std::string& commands,
               const std::string& words = {});

/// What stands after a value of an option that is given once for each value.
[[nodiscard]] core::Message strayValue(const std::string& word, const std::string& option);
/// The message, with "; did you mean 'x'?" where a known word is spelled nearly like the typed one.
[[nodiscard]] core::Message withNearest(core::Message message, std::string_view typed,
                                        std::span<const std::string_view> known);
/// "'time', 'speed'"
[[nodiscard]] std::string quotedList(const Language& in, const std::vector<std::string>& names);

/// Properties of a study that the command line overrides for one call.
struct Overrides {
    std::vector<std::pair<std::string, std::string>> properties;
    storage::SheetOptions sheet = {};   ///< --column, --dates, --sheet
    storage::SheetTraces traces = {};   ///< --traces
    std::optional<double> shift_s = {}; ///< --shift
    /// @return  what setProperty() says about the first that is wrong
    [[nodiscard]] Outcome applyTo(core::StudyProperties& properties) const;
    /// The last value given to a property; nothing: it was not given.
    [[nodiscard]] std::optional<std::string> given(std::string_view property) const;
};
/// --column HEADER=COLUMN, --dates, --sheet
void addSpreadsheetOptions(const Language& in, CLI::App& app, storage::SheetOptions& options);
/// --traces FOLDER
void addTraces(const Language& in, CLI::App& app, storage::SheetTraces& traces);
/// --shift SECONDS
void addShift(const Language& in, CLI::App& app, std::optional<double>& shift_s);
/// --date, --baseline, --limit NAME=VALUE, --set NAME=VALUE, and those of spreadsheets
/// and of their recordings
void addSheetOverrides(const Language& in, CLI::App& app, Overrides& overrides);
/// The same, with --margin, --confidence, --claim, --max-gap
void addAnalysisOverrides(const Language& in, CLI::App& app, Overrides& overrides);

/// "name=value" in two.
[[nodiscard]] Result<std::pair<std::string, std::string>> splitAssignment(const std::string& text);
/// Sets what PROPERTY=VALUE say, up to the first that is wrong.
[[nodiscard]] Outcome assignProperties(core::StudyProperties& properties,
                                       const std::vector<std::string>& assignments);

/// What the verb does once its options are read; puts the outcome into the context.
void onCall(CLI::App& verb, Context& context, std::function<Outcome()> action);

} // namespace bothways::cli
