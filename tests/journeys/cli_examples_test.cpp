// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gtest/gtest.h>

#include <cmath>
#include <ostream>
#include <set>

// The worked examples of tests/published/data/examples (calculated in R from the definitions, see
// SOURCES.md there) against what the program prints, key by key. Tolerance: the 7 digits that the
// program promises.

namespace bothways::tests {
namespace {

using Json = nlohmann::json;

constexpr double kRelative = 1e-7;

struct Example {
    const char* name;
    std::vector<std::string> options;
};

std::ostream& operator<<(std::ostream& stream, const Example& example)
{
    return stream << example.name;
}

/// Null in the expected values because it is the program's own (SOURCES.md).
const std::set<std::string> kOwn = {"/companions/correlated"};

void compare(const Json& expected, const Json& actual, const std::string& path)
{
    if (kOwn.contains(path))
        return;
    if (expected.is_object()) {
        ASSERT_TRUE(actual.is_object()) << path;
        for (const auto& [key, value] : expected.items()) {
            ASSERT_TRUE(actual.contains(key)) << path << "/" << key << " is missing";
            compare(value, actual[key], path + "/" + key);
        }
    } else if (expected.is_array()) {
        ASSERT_TRUE(actual.is_array()) << path;
        ASSERT_EQ(expected.size(), actual.size()) << path;
        for (std::size_t i = 0; i < expected.size(); ++i)
            compare(expected[i], actual[i], path + "/" + std::to_string(i));
    } else if (expected.is_number()) {
        ASSERT_TRUE(actual.is_number()) << path << " is " << actual;
        const double value = expected.get<double>();
        EXPECT_NEAR(actual.get<double>(), value, kRelative * std::abs(value)) << path;
    } else {
        EXPECT_EQ(expected, actual) << path;
    }
}

class CliExample : public ::testing::TestWithParam<Example> {};

TEST_P(CliExample, IsPrintedToSevenDigitsWithEveryKey)
{
    const std::string stem = exampleFile(GetParam().name);
    std::vector<std::string> call = {"analyse", stem + ".csv", "--json"};
    call.insert(call.end(), GetParam().options.begin(), GetParam().options.end());
    compare(Json::parse(readFile(stem + ".json")), jsonOf(call), "");
}

TEST_P(CliExample, IsTheSameFromAStudyFile)
{
    const TempFolder folder;
    const std::string stem = exampleFile(GetParam().name);
    const std::string study = folder / "example.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    const Ran imported = bothwaysProgram({"import", study, stem + ".csv", "--date", "2026-05-09"});
    ASSERT_EQ(imported.code, 0) << imported.err;
    std::vector<std::string> call = {"analyse", study, "--json"};
    call.insert(call.end(), GetParam().options.begin(), GetParam().options.end());
    compare(Json::parse(readFile(stem + ".json")), jsonOf(call), "");
}

INSTANTIATE_TEST_SUITE_P(All, CliExample,
                         ::testing::Values(Example{"morning", {"--margin", "1"}},
                                           Example{"roof_box_open",
                                                   {"--baseline", "off", "--date", "2026-05-09"}},
                                           Example{"too_few", {}},
                                           Example{"two_days", {"--margin", "1", "--claim", "-3"}},
                                           Example{"claim",
                                                   {"--margin", "1", "--claim", "-5",
                                                    "--noise-from", exampleFile("morning.csv")}}),
                         [](const auto& tested) { return std::string(tested.param.name); });

} // namespace
} // namespace bothways::tests
