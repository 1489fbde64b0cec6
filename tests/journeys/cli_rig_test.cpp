// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// The instruments of a car at the command line: tried, named, calibrated, kept.

namespace bothways::tests {
namespace {

using Json = nlohmann::json;
using ::testing::HasSubstr;
using ::testing::Not;

class RigJourney : public ::testing::Test {
protected:
    [[nodiscard]] Ran rig(std::vector<std::string> words, const std::string& language = "C") const
    {
        words.insert(words.begin(), "rig");
        return bothwaysProgram(
            words, {{"XDG_CONFIG_HOME", m_folder.path().string()}, {"LC_ALL", language}});
    }
    [[nodiscard]] std::string drive() const
    {
        std::string text = "time_s,rpm,w,Extra\n";
        for (int i = 0; i <= 100; ++i)
            text += std::to_string(i * 0.1) + "," + std::to_string(1400 + i) + ",612,1\n";
        return m_folder.write("drive.csv", text);
    }
    TempFolder m_folder;
};

TEST_F(RigJourney, IsMadeShownTriedAndCalibrated)
{
    const std::string replay = "replay:" + drive() + ",x100";
    EXPECT_EQ(rig({"list"}).code, 0);
    const Ran made = rig(
        {"new", "car", replay, "--channel", "rpm=rotor_rpm*2+10 rpm", "--channel", "w=output_w"});
    EXPECT_EQ(made.code, 0) << made.err;
    EXPECT_EQ(rig({"list"}).out, "car\n");
    EXPECT_THAT(rig({"show", "car"}).out, HasSubstr("rpm × 2 + 10"));
    EXPECT_THAT(rig({"show", "car"}).out, HasSubstr("replay file:"));

    const Ran tried = rig({"try", "car", "--for", "5"});
    EXPECT_EQ(tried.code, 0) << tried.err;
    EXPECT_THAT(tried.out, HasSubstr("overspeed, load_lost, drive_slip"));
    EXPECT_THAT(tried.out, HasSubstr("3010 rpm")); // 1500 * 2 + 10
    EXPECT_THAT(tried.out, HasSubstr("drive_slip: generator_rpm"));
    EXPECT_THAT(tried.out, Not(HasSubstr("Extra"))) << "the rig does not list it";

    const Ran calibrated = rig({"calibrate", "car", "rotor_rpm", "1000=1100", "2000=2100"});
    EXPECT_EQ(calibrated.code, 0) << calibrated.err;
    const Json shown = Json::parse(rig({"show", "car", "--json"}).out);
    EXPECT_EQ(shown["version"], 1);
    EXPECT_EQ(shown["instruments"][0]["channels"][0]["factor"], 2.0);
    EXPECT_EQ(shown["instruments"][0]["channels"][0]["offset"], 110.0);
}

TEST_F(RigJourney, IsReadFromAnyFolderThoughItsPathWasTypedInOne)
{
    (void)drive();
    const std::string folder = m_folder.path().string();
    const auto inFolder = [&](const std::string& commands) {
        return run("/bin/sh", {"-c", "cd '" + folder + "' && " + commands});
    };
    const Ran made = inFolder("'" BOTHWAYS_PROGRAM "' rig new ./car.json replay:drive.csv,x100 "
                              "--channel rpm=rotor_rpm");
    ASSERT_EQ(made.code, 0) << made.err;
    EXPECT_THAT(readFile(m_folder.path() / "car.json"),
                HasSubstr("file:" + (m_folder.path() / "drive.csv").string()));
    const Ran tried =
        inFolder("mkdir away && cd away && '" BOTHWAYS_PROGRAM "' rig try ../car.json --for 2");
    EXPECT_EQ(tried.code, 0) << tried.err;
    EXPECT_THAT(tried.out, HasSubstr("rotor_rpm"));
}

TEST_F(RigJourney, TriedAsJsonWithoutBeingKept)
{
    const Ran ran = rig({"try", "replay:" + drive() + ",x100", "--json"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    const Json tried = Json::parse(ran.out);
    ASSERT_EQ(tried["channels"].size(), 3u);
    EXPECT_EQ(tried["channels"][0]["name"], "rpm");
    EXPECT_EQ(tried["channels"][0]["value"], 1500.0);
    EXPECT_EQ(tried["channels"][0]["rules"], Json::array());
    EXPECT_NEAR(tried["channels"][0]["rate_hz"].get<double>(), 10.0, 1e-6);
    EXPECT_EQ(tried["channels"][0]["readings"], 101);
    EXPECT_EQ(tried["instruments"][0]["state"], "ended");
    EXPECT_EQ(tried["instruments"][0]["garbage_lines"], 0);
    bool lacks = false;
    for (const Json& rule : tried["rules_without_channel"])
        lacks |= rule["rule"] == "overspeed" && rule["lacks"] == Json::array({"rotor_rpm"});
    EXPECT_TRUE(lacks);
}

TEST_F(RigJourney, AnInstrumentThatGivesNothingSaysWhy)
{
    const Ran ran = rig({"try", "lines:serial:/dev/no_such_port,9600", "--for", "0.3"});
    EXPECT_EQ(ran.code, 3);
    EXPECT_THAT(ran.out, HasSubstr("there is no /dev/no_such_port"));
    EXPECT_THAT(ran.err, HasSubstr("instrument 'lines' gave no reading"));
    const Ran german = rig({"try", "lines:serial:/dev/no_such_port,9600", "--for", "0.3"}, "de_DE");
    EXPECT_THAT(german.out, HasSubstr("/dev/no_such_port gibt es nicht"));
}

TEST_F(RigJourney, WrongWordsAreRefusedWithWhatWasExpected)
{
    const auto refused = [&](const std::vector<std::string>& words) {
        const Ran ran = rig(words);
        EXPECT_EQ(ran.code, 2) << ran.err;
        return ran.err;
    };
    EXPECT_THAT(refused({}), HasSubstr("Expected one of try, new, show, list, calibrate, ports"));
    EXPECT_THAT(refused({"try", "lines:usb0"}), HasSubstr("expected serial:PORT,BAUD"));
    EXPECT_THAT(refused({"try", "cab"}), HasSubstr("there is no rig 'cab'"));
    EXPECT_THAT(refused({"new", "a/../b c", "lines:file:x", "--channel", "rpm"}),
                HasSubstr("is no channel; expected SOURCE=CHANNEL"));
    EXPECT_EQ(
        rig({"new", "car", "lines:file:x", "nmea:udp:*:2000", "--channel", "lines/rpm=rotor_rpm"})
            .code,
        0);
    EXPECT_THAT(refused({"new", "car", "lines:file:y"}), HasSubstr("give --replace"));
    EXPECT_EQ(rig({"new", "car", "lines:file:y", "--replace", "--channel", "a=b"}).code, 0);
    EXPECT_THAT(refused({"calibrate", "car", "b", "1=2", "x"}), HasSubstr("expected SHOWN=TRUE"));
    EXPECT_THAT(refused({"calibrate", "car", "b", "1=2", "1=3"}), HasSubstr("both points show 1"));
    EXPECT_THAT(refused({"calibrate", "car", "c", "1=2", "2=3"}), HasSubstr("expected one of b"));
    EXPECT_THAT(refused({"new", "two", "lines:file:y", "lines:file:z", "--channel", "a=b"}),
                HasSubstr("whose channel is 'a=b'?"));
    const Ran unnamed = rig({"new", "m", "modbus:tcp:h:502"});
    EXPECT_EQ(unnamed.code, 3);
    EXPECT_THAT(unnamed.err, HasSubstr("which registers are read?"));
}

} // namespace
} // namespace bothways::tests
