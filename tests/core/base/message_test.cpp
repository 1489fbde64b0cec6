// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/message.h"

#include "core/base/decimal_text.h"
#include "core/base/result.h"

#include <gtest/gtest.h>

#include <cerrno>
#include <string>
#include <string_view>
#include <system_error>
#include <type_traits>

using namespace bothways;
using core::message;
using core::Message;

// A sentence that nobody marked would stay English for everybody: it does not compile.
static_assert(!std::is_convertible_v<const char*, Message>);
static_assert(!std::is_convertible_v<std::string, Message>);
static_assert(!std::is_convertible_v<std::string_view, Message>);
static_assert(!std::is_constructible_v<Message, const char*>);
static_assert(!std::is_constructible_v<Message, std::string>);
// Nor does a text with places become a sentence without their values.
static_assert(std::is_convertible_v<core::Text<0>, Message>);
static_assert(!std::is_convertible_v<core::Text<1>, Message>);
static_assert(std::is_convertible_v<int, core::Value>);
static_assert(std::is_convertible_v<Message, core::Value>);

TEST(Messages, FillPlacesInOrderAndByNumber)
{
    EXPECT_EQ(message("run {} of {}"_t, 3, "Kim").english(), "run 3 of Kim");
    EXPECT_EQ(message("{1} has run {0}, and {0} alone"_t, 3, "Kim").english(),
              "Kim has run 3, and 3 alone");
    EXPECT_EQ(core::filled("{1}-{0}", {"a", "b"}), "b-a");
}

TEST(Messages, ShowValuesOfEveryKind)
{
    EXPECT_EQ(message("{} {} {} {} {}"_t, std::string("a"), std::string_view("b"), -7,
                      std::size_t{9}, 1LL << 40)
                  .english(),
              "a b -7 9 1099511627776");
    EXPECT_EQ(message("{} {} {}"_t, 0.5, 100 * 0.95, 1e6).english(), "0.5 95 1000000");
    EXPECT_EQ(message("expected {}"_t, "a study"_t).english(), "expected a study");
}

TEST(Messages, EscapeBracesAndLeaveThoseOfValuesAlone)
{
    EXPECT_EQ(message("{{}} is {}"_t, "{} {0} }}").english(), "{} is {} {0} }}");
    EXPECT_EQ(Message("a {{set}}"_t).english(), "a {set}");
    EXPECT_EQ(Message::verbatim("{0} {{ ##").english(), "{0} {{ ##");
    EXPECT_EQ(core::filled("{} and {}", {"one"}), "one and {}") << "a place without a value stays";
    EXPECT_EQ(core::filled("{2} {", {"one"}), "{2} {");
}

TEST(Messages, DoNotShowWhatTellsTwoOfThemApart)
{
    EXPECT_EQ(Message("note##grade of a finding"_t).english(), "note");
    EXPECT_EQ(message("{} runs##a single one"_t, 1).english(), "1 runs");
    EXPECT_EQ(message("a {}"_t, "note##grade of a finding"_t).english(), "a note");
    EXPECT_EQ(message("a {}"_t, "note##mine").english(), "a note##mine") << "a value is whole";
    EXPECT_EQ(core::shownPart("note"), "note");
}

TEST(Messages, HoldOthers)
{
    const Message inner = message("a number from {} to {}"_t, 1, 2);
    EXPECT_EQ(message("{} is impossible; expected {}"_t, 7, inner).english(),
              "7 is impossible; expected a number from 1 to 2");
    EXPECT_EQ(message("({})"_t, message("({})"_t, inner)).english(), "((a number from 1 to 2))");
}

TEST(Messages, AreEmptyUntilTheySaySomething)
{
    EXPECT_TRUE(Message().empty());
    EXPECT_EQ(Message().english(), "");
    EXPECT_FALSE(Message("a"_t).empty());
}

TEST(Messages, CallSystemProblemsByTheirNames)
{
    for (const int problem :
         {ENOENT, EACCES, ENOSPC, EROFS, EIO, EISDIR, EFBIG, EDQUOT, EPIPE, ENAMETOOLONG, ENOTDIR})
        EXPECT_EQ(core::systemProblem(problem).english(), std::generic_category().message(problem));
    EXPECT_STREQ(core::systemProblem(ENOSPC).key, "No space left on device") << "translatable";
    EXPECT_FALSE(core::systemProblem(EDOM).english().empty()) << "in the system's words";
}

TEST(DecimalTexts, KeepTheirDigits)
{
    for (const char* text : {"8.40", "-0.5", "12", "12.000", ".5", "1e5", "1.5e5", "1.2.3", "a.b",
                             "", "-", "1.", "nan", "-40.25"})
        EXPECT_EQ(core::decimalText(text).english(), text);
    EXPECT_EQ(core::decimalText(0.1).english(), "0.1");
    EXPECT_EQ(core::decimalText(1.0 - 0.95).english(), "0.050000000000000044");
    EXPECT_EQ(core::decimalText("8.40").values.size(), 3u) << "the sign is the reader's";
    EXPECT_EQ(core::decimalText("1.5e5").values.size(), 1u);
}

TEST(Places, SayFileLineRunAndColumnAndLeaveOutWhatIsNotKnown)
{
    core::Place place("morning.csv");
    EXPECT_EQ(place.english(), "morning.csv");
    place.line = 14;
    EXPECT_EQ(place.english(), "morning.csv:14");
    place.column = "start";
    EXPECT_EQ(place.english(), "morning.csv:14: column 'start'");
    place.run = 3;
    EXPECT_EQ(place.english(), "morning.csv:14: run 3: column 'start'");
    place.new_run = true;
    place.column.clear();
    EXPECT_EQ(place.english(), "morning.csv:14: new run 3");
    place = {};
    EXPECT_TRUE(place.empty());
    EXPECT_EQ(place.english(), "");
    place.column_number = 4;
    EXPECT_FALSE(place.empty());
    EXPECT_EQ(place.english(), "column 4");
    place.column = "start";
    EXPECT_EQ(place.english(), "column 'start'") << "a name says more than a number";
    place.run = 3;
    EXPECT_EQ(place.english(), "run 3: column 'start'");
}

TEST(Errors, AreDescribedWithTheirPlacesAndAllOthers)
{
    core::Error error{core::ErrorCode::badInput, "is missing"_t, "morning.csv"};
    EXPECT_EQ(core::describe(error), "morning.csv: is missing");
    error.others.push_back(
        {core::ErrorCode::badInput, message("{} is no number"_t, "x"), core::Place()});
    error.others.push_back({core::ErrorCode::badInput, "is empty"_t, "noon.csv"});
    EXPECT_EQ(core::describe(error), "morning.csv: is missing\nx is no number\nnoon.csv: is empty");
}
