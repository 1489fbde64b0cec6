// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/answer/analyse.h"
#include "core/effect/answer.h"
#include "core/study/units.h"
#include "tests/support/example_options.h"
#include "tests/support/plain_sheet.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <fstream>
#include <optional>
#include <string>

namespace bothways::tests {

/// An example of tests/published/data/examples, analysed, beside what is expected of it: calculated
/// in R from the definitions (SOURCES.md there). Tolerance 2e-9 relative, unless said otherwise:
/// both sides solve the same well-conditioned problem in doubles, but the expected values turn
/// miles a gallon with 235.214583, which is 1.4e-9 short of the exact factor.
class AWorkedExample : public testing::TestWithParam<const char*> {
protected:
    void SetUp() override
    {
        const std::string stem =
            std::string(BOTHWAYS_SOURCE_DIR "/tests/published/data/examples/") + GetParam();
        std::ifstream(stem + ".json") >> m_expected;
        m_analysis = core::analyse(tests::PlainSheet::read(stem + ".csv"),
                                   tests::exampleOptions(GetParam()));
    }

    static void expectNumber(const nlohmann::json& expected, std::optional<double> actual,
                             const std::string& what, double relative = 2e-9)
    {
        ASSERT_EQ(actual.has_value(), !expected.is_null()) << what;
        if (!actual)
            return;
        const auto value = expected.get<double>();
        EXPECT_NEAR(*actual, value, relative * std::abs(value)) << what;
    }

    static std::optional<double> pct(std::optional<double> log)
    {
        return log ? std::optional(core::pctFromLog(*log)) : std::nullopt;
    }

    nlohmann::json m_expected;
    core::Analysis m_analysis;
};

inline std::string exampleName(const testing::TestParamInfo<const char*>& info)
{
    return info.param;
}

} // namespace bothways::tests
