// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample_data/make_demo/generator_day.h"

#include "sample_data/make_demo/portable_noise.h"

#include <fmt/format.h>

namespace bothways::demo {
namespace {

constexpr std::uint64_t kSeed = 20260613;
constexpr const char* kDate = "2026-06-13";

// Magnitudes from first principles (method, section 11, its middle factors, diesel), so that the
// invented device does what a real one of its output would: it costs more than it relieves.
constexpr double kHeat_j_per_l = 35.9e6;
constexpr double kEngine = 0.42, kAlternator = 0.60, kGenerator = 0.70, kDrive = 0.93;
constexpr double kInduction = 1.0 / 3.0;
constexpr double kSpeed_ms = kTarget_kmh / 3.6;

/// Fuel that `watts` at the terminals of the alternator cost, L/100 km.
constexpr double alternatorFuel(double watts)
{
    return 1e5 * watts / (kAlternator * kEngine * kHeat_j_per_l * kSpeed_ms);
}

/// Net fuel of the device: its drag less the alternator's relief, L/100 km.
constexpr double deviceFuel(double watts)
{
    const double drag =
        1e5 * watts /
        (kGenerator * (1.0 - kInduction) * kDrive * kEngine * kHeat_j_per_l * kSpeed_ms);
    return drag - alternatorFuel(watts);
}

constexpr double kNoise = 0.0045;          // of one run, relative
constexpr double kDrift_per_h = -0.0015;   // the air and the bearings warm up
constexpr double kOutAgainstReturn = 0.02; // breeze and slope of the levee
constexpr double kLowTyre = 0.018;         // one tyre a bar low

/// Draws the day, run after run; every quantity is drawn for every run, so that changing what went
/// wrong in one run leaves the numbers of the others alone.
class Day {
public:
    std::vector<DayRun> drive()
    {
        block(5.0 * 3600 + 12 * 60, false, 0.0, 10);
        pause(24.0);
        block(m_clock_s, true, 14.0, 6);
        pause(4.0); // the blades are turned at the roadside
        block(m_clock_s, true, 18.0, 8);
        pause(22.0);
        block(m_clock_s, false, 0.0, 9);
        whatWentWrong();
        return m_day;
    }

private:
    void pause(double minutes) { m_clock_s += 60.0 * minutes; }

    void block(double start_s, bool device, double pitch_deg, int runs)
    {
        m_clock_s = start_s;
        for (int i = 0; i < runs; ++i)
            m_day.push_back(run(device, pitch_deg, i % 2 == 0));
    }

    DayRun run(bool device, double pitch_deg, bool out)
    {
        DayRun run;
        run.number = static_cast<int>(m_day.size()) + 1;
        run.device = device;
        run.pitch_deg = pitch_deg;
        run.out = out;
        run.start_s = static_cast<double>(static_cast<int>(m_clock_s));
        run.duration_s = 200.0 + 1.3 * m_noise.bell();
        run.distance_km = kStretch_km + 0.008 * m_noise.bell();
        weather(run);
        device_(run);
        const double hours = (run.start_s - 5.2 * 3600) / 3600.0;
        double consumption = kConsumption_l_per_100km;
        consumption += device ? deviceFuel(run.output_w) : 0.0;
        consumption *= 1.0 + kDrift_per_h * hours;
        consumption *= 1.0 + (out ? 0.5 : -0.5) * kOutAgainstReturn;
        consumption *= 1.0 + kNoise * m_noise.bell();
        run.l_per_100km = consumption;
        run.windscreen_on_s = -45.0 - m_noise.uniform(0.0, 40.0);
        run.battery_v_start = 14.1 + 0.03 * m_noise.bell();
        run.battery_v_end = run.battery_v_start + 0.02 * m_noise.bell();
        m_clock_s += run.duration_s + 175.0 + m_noise.uniform(0.0, 40.0); // turning round
        return run;
    }

    void weather(DayRun& run)
    {
        const double hours = (run.start_s - 5.2 * 3600) / 3600.0;
        run.wind_ms = 1.1 + 0.2 * hours + 0.25 * m_noise.bell();
        run.wind_from_deg = 245.0 + 12.0 * m_noise.bell();
        run.temperature_c = 15.3 + 0.9 * hours + 0.1 * m_noise.bell();
        run.pressure_hpa = 1011.2 - 0.15 * hours;
        run.humidity_pct = 95.0 - 3.5 * hours + 0.8 * m_noise.bell();
    }

    void device_(DayRun& run)
    {
        const double watts = m_noise.bell(), rpm = m_noise.bell(), peak = m_noise.uniform();
        if (!run.device)
            return;
        const bool fine = run.pitch_deg < 16.0;
        run.output_w = fine ? 430.0 + 9.0 * watts : 640.0 + 12.0 * watts;
        run.rotor_rpm = (fine ? 2620.0 : 2890.0) + 15.0 * rpm;
        run.rotor_rpm_max = run.rotor_rpm + 40.0 + 60.0 * peak;
    }

    DayRun& at(int number) { return m_day[static_cast<std::size_t>(number - 1)]; }

    void whatWentWrong()
    {
        for (const int number : {1, 2}) {
            at(number).low_tyre = true;
            at(number).l_per_100km *= 1.0 + kLowTyre;
            at(number).reason = "other";
            at(number).evidence = "left rear tyre found at 2.5 bar after run 2; pumped up to 3.5";
        }
        forgottenWindscreen(at(14));
        besideTheRoadTrain(at(19));
        roadworks(at(27));
        at(1).cruising_late = true;
        at(17).blades_slow = true;
        at(22).tractor_ahead = true;
        at(5).marks = "88 gust";
        at(22).notes = "tractor ahead on the last 200 m, kept the distance";
        at(11).notes = "generator on, blades at 14 degrees";
        at(17).notes = "blades at 18 degrees";
        at(25).notes = "generator off the roof";
        typedTwice();
    }

    /// Its button was pressed before the run before, and not again.
    static void forgottenWindscreen(DayRun& run)
    {
        run.windscreen_on_s = -518.0;
        run.windscreen_off_s = run.windscreen_on_s + 60.0 * kWindscreen_min;
        const double share = 1.0 - *run.windscreen_off_s / run.duration_s;
        run.l_per_100km -= alternatorFuel(kWindscreen_w) * share;
        run.notes = "windscreen misting up at the end";
    }

    static void besideTheRoadTrain(DayRun& run)
    {
        run.overspeed_at_s = 131.4;
        run.rotor_rpm_max = 3410.0;
        run.l_per_100km *= 1.0 - 0.011; // drawn along in its wake
        run.marks = "132 passing_traffic road train; 140 noise from the roof";
    }

    static void roadworks(DayRun& run)
    {
        run.stopped_at_s = 121.0;
        run.standing_s = 96.0;
        run.duration_s += 124.0;
        run.meter_lost = true; // reset while standing
        run.reason = "interrupted";
        run.evidence = "flagman at the roadworks, stood for a minute and a half; meter reset";
    }

    /// Run 7 is run 6 again: the companion lost the line. The later numbers move up by one.
    void typedTwice()
    {
        DayRun copy = at(6);
        copy.copy_of = copy.number;
        m_day.insert(m_day.begin() + 6, copy);
        for (std::size_t i = 0; i < m_day.size(); ++i)
            m_day[i].number = static_cast<int>(i) + 1;
        // The logger ran in these: six with a fault, and two clean ones of each configuration.
        for (const int number : {1, 4, 10, 15, 18, 19, 20, 22, 23, 28})
            at(number).trace = fmt::format("levee_generator_traces/run_{:02}.csv", number);
    }

    PortableNoise m_noise{kSeed};
    double m_clock_s = 0.0;
    std::vector<DayRun> m_day;
};

std::string clockTime(double s)
{
    const int whole = static_cast<int>(s);
    return fmt::format("{}T{:02}:{:02}:{:02}", kDate, whole / 3600, whole / 60 % 60, whole % 60);
}

std::string cell(const std::string& text)
{
    return text.find_first_of(",\"") == std::string::npos ? text : "\"" + text + "\"";
}

std::string sheetLine(const DayRun& run)
{
    const std::string output = run.device ? fmt::format("{:.0f}", run.output_w) : "";
    const std::string rotor = run.device ? fmt::format("{:.0f}", run.rotor_rpm_max) : "";
    return fmt::format(
        "{},{},{},{},{},{:.0f},{:.2f},{},{},{},{},{},{:.0f},\"lights, fan 2, heated windscreen\","
        "{:.0f},{},{},{:.1f},{:.1f},{:.1f},{:.0f},{:.1f},{:.1f},{:.0f},{},{}\n",
        run.number, run.device ? "on" : "off",
        run.device ? fmt::format("{:.0f}", run.pitch_deg) : "", run.out ? "out" : "return",
        clockTime(run.start_s), run.duration_s, run.distance_km,
        run.meter_lost ? "" : fmt::format("{:.2f}", run.l_per_100km),
        run.reason.empty() ? "counted" : "discarded", run.reason, cell(run.evidence),
        cell(run.marks), kLoad_w, run.windscreen_on_s, output, rotor, run.battery_v_start,
        run.battery_v_end, run.wind_ms, run.wind_from_deg, run.temperature_c, run.pressure_hpa,
        run.humidity_pct, run.trace, cell(run.notes));
}

} // namespace

std::vector<DayRun> generatorDay()
{
    return Day().drive();
}

std::string generatorSheet(const std::vector<DayRun>& day)
{
    std::string text =
        "# Invented data, made by the program in sample_data/make_demo with a fixed seed.\n"
        "# A delivery van with a ram-air generator on its roof rack, on a levee road beside a "
        "lake.\n"
        "# Neither van nor generator, road nor lake exists. Setting: blade pitch, degrees.\n"
        "run,configuration,setting,direction,start,duration_s,distance_km,l_per_100km,status,"
        "reason,evidence,marks,accessory_w,accessories,windscreen_on_s,output_w,rotor_rpm_max,"
        "battery_v_start,battery_v_end,wind_ms,wind_from_deg,temperature_c,pressure_hpa,"
        "humidity_pct,trace,notes\n";
    for (const DayRun& run : day)
        text += sheetLine(run);
    return text;
}

} // namespace bothways::demo
