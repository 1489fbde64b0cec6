// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/trace_channels.h"
#include "tests/app/desktop/support/page_fixture.h"

namespace bothways::app {

TEST(TraceChannelsTest, FindThePartThatAColumnNames)
{
    EXPECT_EQ(partNamedIn("Rotor left [rpm]"), "left");
    EXPECT_EQ(partNamedIn("rotor_rpm@front-2"), "front-2");
    EXPECT_EQ(partNamedIn("Drehzahl_rechts"), "rechts");
    EXPECT_EQ(partNamedIn("leftover"), "");
    EXPECT_EQ(partNamedIn("me@example org"), "") << "no name of a part";
    EXPECT_EQ(channelsOfPart("left").front(), "rotor_rpm@left");
    const QStringList all{"rotor_rpm@left", "output_w", "rotor_rpm@right", "setting@right"};
    EXPECT_EQ(placeOfPart("rotor_rpm@left", all), 0);
    EXPECT_EQ(placeOfPart("rotor_rpm@right", all), 1);
    EXPECT_EQ(placeOfPart("output_w", all), 0);
    EXPECT_EQ(placeOfPart("setting@right", all), 0);
}

} // namespace bothways::app
