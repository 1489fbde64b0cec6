// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/questions.h"

#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/storage/study/study_builders.h"

using namespace bothways;
using namespace bothways::app;
using bothways::tests::aRun;
using About = Question::About;

namespace {

core::Study aMorning()
{
    core::Study study;
    study.runs = {aRun().number(1).at_min(0).consuming(8.4),
                  aRun().number(2).returning().at_min(7).consuming(8.2),
                  aRun().number(3).at_min(14).consuming(8.5),
                  aRun().number(4).returning().at_min(21).consuming(8.3)};
    for (std::size_t i = 0; i < study.runs.size(); ++i)
        study.runs[i].id = static_cast<core::RunId>(i + 1);
    return study;
}

QString asked(const core::Study& study, const core::Run& run, About about)
{
    for (const Question& question : questionsAbout(study, run, {}))
        if (question.about == about)
            return question.sentence;
    return {};
}

} // namespace

TEST(Questions, AnOrdinaryRunIsNotAskedAbout)
{
    EXPECT_TRUE(questionsAbout(aMorning(), aRun().number(5).at_min(28).consuming(8.6), {}).empty());
    EXPECT_TRUE(questionsAbout({}, aRun().consuming(99.0), {}).empty())
        << "nothing to compare with";
}

TEST(Questions, ASlipOfTheDecimalSignIsNamed)
{
    const QString sentence =
        asked(aMorning(), aRun().number(5).at_min(28).consuming(84.1), About::consumption);
    EXPECT_TRUE(sentence.contains("Did you mean 8.41?")) << sentence.toStdString();
}

TEST(Questions, AnotherUnitThatWouldFitIsNamed)
{
    const QString sentence =
        asked(aMorning(), aRun().number(5).at_min(28).consuming(28.1), About::consumption);
    EXPECT_TRUE(sentence.contains("In mpg (US) it would fit.")) << sentence.toStdString();
}

TEST(Questions, FifteenPerCentAgainstItsLikeAskAndLessDoNot)
{
    const double usual = 8.45; // the median of the two out runs
    EXPECT_EQ(asked(aMorning(), aRun().at_min(28).consuming(usual * 1.14), About::consumption), "");
    EXPECT_NE(asked(aMorning(), aRun().at_min(28).consuming(usual * 1.16), About::consumption), "");
    EXPECT_NE(asked(aMorning(), aRun().at_min(28).consuming(usual / 1.16), About::consumption), "");
}

TEST(Questions, ARunIsNotHeldAgainstItself)
{
    core::Study study = aMorning();
    study.runs.resize(1);
    EXPECT_EQ(asked(study, study.runs[0], About::consumption), "");
}

TEST(Questions, TwoRunsTheSameWayAreAskedAboutBeforeTheyAreSaved)
{
    EXPECT_NE(asked(aMorning(), aRun().number(5).returning().at_min(28), About::direction), "");
    EXPECT_EQ(asked(aMorning(), aMorning().runs[3], About::direction), "");
}

TEST(Questions, AStartInTheMiddleOrOnAnotherDayIsAskedAbout)
{
    EXPECT_TRUE(asked(aMorning(), aRun().number(5).at_min(10), About::start).contains("run 4"));
    EXPECT_TRUE(asked(aMorning(), aRun().number(5).at_min(21 + 361), About::start)
                    .contains("a new day begins"));
    EXPECT_EQ(asked(aMorning(), aRun().number(5).at_min(28), About::start), "");
}

TEST(Questions, ALengthUnlikeTheOthersIsAskedAbout)
{
    core::Study study = aMorning();
    for (core::Run& run : study.runs)
        run.distance_km = 5.2;
    core::Run run = aRun().number(5).at_min(28);
    run.distance_km = 2.5;
    EXPECT_NE(asked(study, run, About::distance), "");
    run.distance_km = 5.3;
    EXPECT_EQ(asked(study, run, About::distance), "");
    run.duration_s = 212.0;
    run.speed_kmh = 60.0; // 5.3 km in 212 s are 90 km/h
    EXPECT_TRUE(asked(study, run, About::speed).contains("90"));
}
