// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/clock.h"

#include <gtest/gtest.h>

using namespace bothways::core;

TEST(Clock, ReadsAndWritesTheSameMoment)
{
    for (const char* text :
         {"2026-05-09T05:40:00", "2026-05-09T05:40:00.25", "2026-12-31T23:59:59Z",
          "2026-05-09T05:40:00+02:00", "1969-12-31T23:59:59.5-09:30"}) {
        const auto instant = parseDateTime(text);
        ASSERT_TRUE(instant) << text;
        EXPECT_EQ(formatDateTime(instant.value()), text);
    }
}

TEST(Clock, AnOffsetIsTakenOff)
{
    EXPECT_EQ(parseDateTime("2026-05-09T05:40:00+02:00").value().us,
              parseDateTime("2026-05-09T03:40Z").value().us);
}

TEST(Clock, RefusesWhatIsNoDateOrTime)
{
    for (const char* text :
         {"", "2026-02-30T05:40", "2026-05-09", "2026-05-09T24:00", "2026-05-09T05:40x",
          "2026-5-9T05:40", "2026-05-09T05:40+99:00", "2026-05-09T05:40:00."})
        EXPECT_FALSE(parseDateTime(text)) << text;
    for (const char* text : {"", "5:40", "25:00", "05:60", "05:40:61", "05:40 am", "-1:00"})
        EXPECT_FALSE(parseTimeOfDay_us(text)) << text;
}
