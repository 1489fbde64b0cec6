// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Import of a long recording beside R's fread (which only parses) and the sqlite3 shell's .import
// (which stores rows), in turn on the same file; size; reading back; memory. Prints medians and
// ratios. Peers that are not installed are left out, and that is said.
//
//   trace_bench [ROWS [ROUNDS [FOLDER]]]      4,200,000 rows (288 MB), 5 rounds, a temporary folder

#include "storage/recordings/recordings.h"
#include "storage/recordings/trace_import.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace {

using namespace bothways;
namespace fs = std::filesystem;

double now()
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values.empty() ? std::nan("") : values[values.size() / 2];
}

/// Xorshift; the same file everywhere.
class Noise {
public:
    double uniform()
    {
        m_state ^= m_state << 13;
        m_state ^= m_state >> 7;
        m_state ^= m_state << 17;
        return static_cast<double>(m_state >> 11) * 0x1.0p-53;
    }
    double bell() { return (uniform() + uniform() + uniform() + uniform() - 2.0) * 1.7320508; }

private:
    std::uint64_t m_state = 88172645463325252U;
};

/// A drive at 100 Hz with ten columns and the decimals that loggers write. Invented.
void writeReference(const fs::path& file, long rows)
{
    std::FILE* out = std::fopen(file.c_str(), "wb");
    if (!out) {
        fmt::print("cannot write {}\n", file.string());
        std::exit(1);
    }
    Noise noise;
    std::string text = "time_s,road_speed_kmh,fuel_rate_l_per_h,battery_v,load_a,accessory_w,"
                       "rotor_rpm,coolant_c,throttle_pct,grade_pct\n";
    double speed = 80, target = 80, grade = 0, coolant = 88;
    for (long i = 0; i < rows; ++i) {
        if (i % 20000 == 0)
            target = 40 + 80 * noise.uniform();
        speed += (target - speed) * 0.0005 + 0.02 * noise.bell();
        grade += -0.0005 * grade + 0.01 * noise.bell();
        const double load = (i / 6000) % 2 == 1 ? 18 + 0.3 * noise.bell() : 4 + 0.2 * noise.bell();
        const double volts = 13.9 - 0.02 * load + 0.02 * noise.bell();
        const double fuel = std::max(0.0, 0.8 + 0.04 * speed + 0.0004 * speed * speed +
                                              0.9 * grade + 0.03 * load + 0.1 * noise.bell());
        coolant += (90 - coolant) * 1e-4 + 0.01 * noise.bell();
        fmt::format_to(std::back_inserter(text),
                       "{:.2f},{:.3f},{:.4f},{:.3f},{:.3f},{:.2f},{:.1f},{:.2f},{:.2f},{:.3f}\n",
                       static_cast<double>(i) * 0.01, speed, fuel, volts, load, volts * load,
                       900 + speed * 21.7 + 4 * noise.bell(), coolant,
                       10 + 0.2 * speed + noise.bell(), grade);
        if (text.size() > (1U << 20) || i + 1 == rows) {
            std::fwrite(text.data(), 1, text.size(), out);
            text.clear();
        }
    }
    std::fclose(out);
}

template <class T>
T taken(core::Result<T> result)
{
    if (!result) {
        fmt::print("{}\n", core::describe(result.error()));
        std::exit(1);
    }
    return std::move(result).take();
}

bool isInstalled(const char* command)
{
    return std::system(fmt::format("{} > /dev/null 2>&1", command).c_str()) == 0;
}

/// What a command prints, as a number.
double numberFrom(const std::string& command)
{
    std::FILE* pipe = ::popen(command.c_str(), "r");
    std::array<char, 128> line{};
    const bool got = pipe && std::fgets(line.data(), line.size(), pipe);
    if (pipe)
        ::pclose(pipe);
    return got ? std::atof(line.data()) : std::nan("");
}

double freadSeconds(const fs::path& csv)
{
    return numberFrom(fmt::format(
        "Rscript -e 'suppressPackageStartupMessages(library(data.table)); setDTthreads(2); "
        "t <- system.time(d <- fread(\"{}\", nThread = 2, showProgress = FALSE)); "
        "cat(t[[\"elapsed\"]])'",
        csv.string()));
}

double dotImportSeconds(const fs::path& csv, const fs::path& database)
{
    fs::remove(database);
    const double start = now();
    const int status = std::system(
        fmt::format("sqlite3 {} 'create table t(a real, b real, c real, d real, e real, f real, "
                    "g real, h real, i real, j real)' '.mode csv' '.import --skip 1 {} t'",
                    database.string(), csv.string())
            .c_str());
    const double seconds = now() - start;
    fs::remove(database);
    return status == 0 ? seconds : std::nan("");
}

/// Peak of this process' memory so far, MB.
double peakMb()
{
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024.0;
}

/// Imports in a process of its own, so that its peak of memory is its own.
struct Imported {
    double seconds = 0.0, beforeMb = 0.0, peakMb = 0.0;
};
Imported importOnce(const fs::path& csv, const fs::path& file)
{
    fs::remove(file);
    int ends[2];
    if (::pipe(ends) != 0)
        std::exit(1);
    const pid_t child = ::fork();
    if (child == 0) {
        storage::StudyFile study = taken(storage::StudyFile::create(file));
        Imported imported{0.0, peakMb(), 0.0};
        const double start = now();
        taken(storage::importTrace(study, csv)); // committed and synced when it returns
        imported.seconds = now() - start;
        imported.peakMb = peakMb();
        const bool said = ::write(ends[1], &imported, sizeof imported) == sizeof imported;
        std::_Exit(said ? 0 : 1);
    }
    Imported imported;
    ::close(ends[1]);
    const bool heard = ::read(ends[0], &imported, sizeof imported) == sizeof imported;
    ::close(ends[0]);
    ::waitpid(child, nullptr, 0);
    if (!heard)
        std::exit(1);
    return imported;
}

/// The recording once more as a database with a row for each sample time, as programs keep it that
/// know no better form.
void writeRows(const storage::StudyFile& study, core::RecordingId recording, const fs::path& file)
{
    fs::remove(file);
    std::vector<core::Samples> channels;
    const auto all = taken(storage::recordings(study));
    for (const core::ChannelInfo& channel : all.front().channels)
        channels.push_back(taken(storage::readChannel(study, recording, channel.name)));
    SQLite::Database rows(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    std::string columns = "time_s REAL", marks = "?";
    for (std::size_t c = 0; c < channels.size(); ++c) {
        columns += fmt::format(", c{} REAL", c);
        marks += ", ?";
    }
    rows.exec("CREATE TABLE sample (" + columns + ")");
    SQLite::Transaction oneGo(rows);
    SQLite::Statement insert(rows, "INSERT INTO sample VALUES (" + marks + ")");
    for (std::size_t i = 0; i < channels.front().size(); ++i) {
        insert.bind(1, channels.front().time_s[i]);
        for (std::size_t c = 0; c < channels.size(); ++c)
            insert.bind(static_cast<int>(c) + 2, channels[c].value[i]);
        insert.exec();
        insert.reset();
    }
    oneGo.commit();
}

/// One column, or the times too, from the database of rows.
double secondsFromRows(SQLite::Database& rows, std::string_view columns)
{
    const double start = now();
    std::vector<double> values, times;
    SQLite::Statement select(rows, fmt::format("SELECT {} FROM sample", columns));
    while (select.executeStep()) {
        values.push_back(select.getColumn(0).getDouble());
        if (select.getColumnCount() > 1)
            times.push_back(select.getColumn(1).getDouble());
    }
    return now() - start;
}

void timeReading(const fs::path& file, int rounds, double rows)
{
    constexpr const char* kChannel = "fuel_rate_l_per_h";
    storage::StudyFile study = taken(storage::StudyFile::open(file, true));
    const auto recording = taken(storage::recordings(study)).front().id;
    const fs::path rowsFile = fs::path(file).replace_extension("rows");
    writeRows(study, recording, rowsFile);
    SQLite::Database rowsDatabase(rowsFile.string(), SQLite::OPEN_READONLY);
    std::vector<double> whole, alone, floor, rowsWhole, rowsAlone;
    for (int round = 0; round < rounds * 3; ++round) {
        double start = now();
        const auto samples = taken(storage::readChannel(study, recording, kChannel));
        whole.push_back(now() - start);
        start = now();
        std::vector<double> copy(samples.value);
        std::vector<double> times(samples.time_s.begin(), samples.time_s.end());
        floor.push_back(now() - start);
        const auto trace = taken(storage::openRecording(study, recording));
        static_cast<void>(trace->samples("road_speed_kmh"));
        start = now();
        static_cast<void>(trace->samples(kChannel)); // its times are known
        alone.push_back(now() - start);
        rowsAlone.push_back(secondsFromRows(rowsDatabase, "c1"));
        rowsWhole.push_back(secondsFromRows(rowsDatabase, "c1, time_s"));
    }
    fs::remove(rowsFile);
    const double perMillion = 1e6 / rows * 1e3;
    const auto ms = [&](const std::vector<double>& seconds) {
        return median(seconds) * perMillion;
    };
    fmt::print("read back, ms a million samples (target 5, or 15 x faster than rows):\n"
               "  a channel alone {:.2f}; from rows {:.1f}: {:.1f} x\n"
               "  a channel with its times {:.2f}; from rows {:.1f}: {:.1f} x; copying both in "
               "memory {:.2f}\n",
               ms(alone), ms(rowsAlone), ms(rowsAlone) / ms(alone), ms(whole), ms(rowsWhole),
               ms(rowsWhole) / ms(whole), ms(floor));
}

} // namespace

int main(int argc, char** argv)
{
    const long rows = argc > 1 ? std::atol(argv[1]) : 4'200'000;
    const int rounds = argc > 2 ? std::atoi(argv[2]) : 5;
    const fs::path folder = argc > 3 ? fs::path(argv[3]) : fs::temp_directory_path();
    const fs::path csv = folder / fmt::format("bothways_reference_{}.csv", rows);
    const fs::path file = folder / "bothways_bench.bothways";
    if (!fs::exists(csv))
        writeReference(csv, rows);
    const double bytes = static_cast<double>(fs::file_size(csv));
    fmt::print("{}: {} rows x 10, {:.1f} MB\n", csv.string(), rows, bytes / 1e6);
    const bool hasR = isInstalled("Rscript -e 'library(data.table)'");
    const bool hasShell = isInstalled("sqlite3 --version");
    if (!hasR)
        fmt::print("R with data.table is not installed: no comparison with fread\n");
    if (!hasShell)
        fmt::print("the sqlite3 shell is not installed: no comparison with .import\n");

    std::vector<double> ours, fread, dotImport, toFread, toImport, memory;
    for (int round = 0; round < rounds; ++round) {
        const Imported imported = importOnce(csv, file);
        ours.push_back(imported.seconds);
        memory.push_back(imported.peakMb - imported.beforeMb);
        if (hasR) {
            fread.push_back(freadSeconds(csv));
            toFread.push_back(imported.seconds / fread.back());
        }
        if (hasShell && round < 3) {
            dotImport.push_back(dotImportSeconds(csv, folder / "bothways_bench.db"));
            toImport.push_back(dotImport.back() / imported.seconds);
        }
        fmt::print("round {}: import {:.3f} s, fread {:.3f} s, .import {:.2f} s\n", round + 1,
                   ours.back(), fread.empty() ? std::nan("") : fread.back(),
                   dotImport.empty() ? std::nan("") : dotImport.back());
        std::fflush(stdout);
    }
    fmt::print("import to durable: {:.3f} s, {:.0f} MB/s\n", median(ours),
               bytes / 1e6 / median(ours));
    if (hasR)
        fmt::print("  {:.2f} x fread that only parses (target 0.9 at most)\n", median(toFread));
    if (hasShell)
        fmt::print("  {:.1f} x faster than .import (target 15 at least)\n", median(toImport));
    fmt::print("  study {:.1f} MB, {:.3f} of the CSV (target 0.20 at most)\n",
               static_cast<double>(fs::file_size(file)) / 1e6,
               static_cast<double>(fs::file_size(file)) / bytes);
    fmt::print("  {:.0f} MB of further memory at its peak (target 64 at most)\n", median(memory));
    timeReading(file, rounds, static_cast<double>(rows));
    fs::remove(file);
}
