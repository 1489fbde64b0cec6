// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/loggers/fuzz.h"

#include "core/recording/trace.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"
#include "storage/recordings/trace_import.h"
#include "storage/sheet/run_sheet.h"
#include "tests/storage/study/study_builders.h"

#include <fmt/format.h>

#include <algorithm>
#include <bit>
#include <cmath>
#include <fstream>
#include <iterator>
#include <optional>
#include <random>

namespace bothways::tests {
namespace {

namespace fs = std::filesystem;
using namespace bothways::storage;

/// What readers stumble over, if they stumble.
constexpr std::string_view kTokens[] = {",",
                                        ";",
                                        "\t",
                                        "|",
                                        "\n",
                                        "\r",
                                        "\r\n",
                                        "\"",
                                        "\"\"",
                                        "#",
                                        ".",
                                        "-",
                                        "+",
                                        "e",
                                        "E9",
                                        "1e999",
                                        "-0.0",
                                        "nan",
                                        "inf",
                                        "99999999999999999999",
                                        "0.00000000000000000000000001",
                                        "9007199254740993",
                                        "-9223372036854775808",
                                        "time_s",
                                        "time",
                                        "mark",
                                        "date",
                                        "2026-05-09T05:40:00Z",
                                        "24:00:00",
                                        "1778305200123",
                                        "\xef\xbb\xbf",
                                        "\xff",
                                        "<",
                                        ">",
                                        "</",
                                        "/>",
                                        "&",
                                        "&amp;",
                                        "&#x110000;",
                                        "<![CDATA[",
                                        "]]>",
                                        "<!--",
                                        "-->",
                                        "<?",
                                        "<!DOCTYPE",
                                        "<trkpt lat=\"91\" lon=\"0\">",
                                        "*",
                                        "$",
                                        "$GPRMC,",
                                        "*00",
                                        "\xf0\x9f\x9a\x97",
                                        "1970-01-01",
                                        "2200-12-31T23:59:60+14:00"};

struct Sample {
    std::string folder, bytes;
};

std::vector<Sample> corpusFrom(const fs::path& corpus)
{
    std::vector<fs::path> files;
    for (const char* folder : {"csv", "gpx", "nmea", "sheet"})
        for (const auto& entry : fs::directory_iterator(corpus / folder))
            files.push_back(entry.path());
    std::sort(files.begin(), files.end()); // the order of a folder is nobody's promise
    std::vector<Sample> samples;
    for (const auto& file : files) {
        std::ifstream stream(file, std::ios::binary);
        samples.push_back(
            {file.parent_path().filename().string(), {std::istreambuf_iterator<char>(stream), {}}});
    }
    return samples;
}

std::string faultOf(const core::Error& error)
{
    if (error.message.empty() || error.where.empty())
        return "an Error without words or place: " + core::describe(error);
    return {};
}

std::string faultOf(const core::RunTrace& trace)
{
    for (const auto& channel : trace.channels()) {
        const auto samples = trace.samples(channel.name);
        if (!samples)
            continue;
        if (samples->size() != samples->time_s.size())
            return channel.name + ": not as many times as values";
        for (std::size_t i = 0; i < samples->size(); ++i) {
            if (!std::isfinite(samples->value[i]) || !std::isfinite(samples->time_s[i]))
                return fmt::format("{}: sample {} is not finite", channel.name, i);
            if (i > 0 && !(samples->time_s[i] > samples->time_s[i - 1]))
                return fmt::format("{}: time {} does not ascend", channel.name, i);
            if (samples->value[i] < channel.minimum || samples->value[i] > channel.maximum)
                return fmt::format("{}: sample {} is outside of its bounds", channel.name, i);
        }
    }
    return {};
}

bool sameBits(double a, double b)
{
    return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b);
}

/// `stored` has the recording's own times, `read` those from the run's start.
std::string difference(const core::RunTrace& stored, const core::RunTrace& read)
{
    if (stored.channels().size() != read.channels().size())
        return "the study has not as many channels as the file";
    for (const auto& channel : read.channels()) {
        const auto a = stored.samples(channel.name), b = read.samples(channel.name);
        if (!a != !b)
            return channel.name + ": samples in one alone";
        if (!a)
            continue;
        if (!std::equal(a->value.begin(), a->value.end(), b->value.begin(), b->value.end(),
                        sameBits))
            return channel.name + ": the study gives other values than the file";
    }
    return {};
}

} // namespace

struct Fuzz::Private {
    std::mt19937_64 random;
    std::vector<Sample> corpus;
    TemporaryFolder folder;
    std::optional<StudyFile> study;
    std::string last;
    int readable = 0;
    int turns = 0;

    std::size_t below(std::size_t n) { return n == 0 ? 0 : random() % n; }
    std::string mutated(const Sample& sample);
    std::string check(const std::string& folderName);
    std::string checkSheet();
    std::string checkTrace();
    std::string checkImport(const fs::path& file, const core::RunTrace* read);
};

std::string Fuzz::Private::mutated(const Sample& sample)
{
    std::string bytes = sample.bytes;
    for (std::size_t n = 1 + below(6); n > 0; --n) {
        const std::size_t at = below(bytes.size() + 1);
        const std::size_t length = std::min(bytes.size() - at, 1 + below(below(4) == 0 ? 200 : 12));
        switch (below(8)) {
        case 0:
            if (at < bytes.size())
                bytes[at] = static_cast<char>(random());
            break;
        case 1: bytes.insert(at, kTokens[below(std::size(kTokens))]); break;
        case 2: bytes.erase(at, length); break;
        case 3: bytes.insert(below(bytes.size() + 1), bytes.substr(at, length)); break;
        case 4: bytes.replace(at, length, kTokens[below(std::size(kTokens))]); break;
        case 5: {
            const std::string& other = corpus[below(corpus.size())].bytes;
            bytes = bytes.substr(0, at) + other.substr(below(other.size() + 1));
            break;
        }
        case 6:
            if (below(4) == 0)
                bytes.resize(at);
            break;
        default: // the same many times, so that lines get long and blocks many
            if (below(50) == 0) {
                const std::string piece = bytes.substr(at, length);
                for (int i = 0; i < 20'000 && bytes.size() < 3'000'000; ++i)
                    bytes.insert(bytes.size(), piece);
            }
        }
    }
    return bytes;
}

std::string Fuzz::Private::checkSheet()
{
    const auto sheet = parseRunSheet(last, "fuzz.csv", {"2026-05-09", "2026-05-09"});
    if (!sheet)
        return faultOf(sheet.error());
    ++readable;
    const auto again = parseRunSheet(writeRunSheet(sheet.value().study), "again.csv",
                                     {"2026-05-09", "2026-05-09"});
    if (!again)
        return "a sheet that was written cannot be read: " + core::describe(again.error());
    return again.value().study.runs.size() == sheet.value().study.runs.size()
               ? std::string()
               : "a sheet that was written has other runs";
}

std::string Fuzz::Private::checkImport(const fs::path& file, const core::RunTrace* read)
{
    if (!study)
        study = taken(StudyFile::create(folder / "fuzz.bothways"));
    const auto report = importTrace(*study, file);
    const auto list = taken(recordings(*study));
    if (!report)
        return !list.empty() ? "a refused file left a recording"
               : read        ? "the study refuses what is read from the file: " +
                            core::describe(report.error())
                      : faultOf(report.error());
    std::string fault;
    {
        const auto stored = taken(openRecording(*study, report.value().recording));
        fault = faultOf(*stored);
        if (fault.empty() && read)
            fault = difference(*stored, *read);
    }
    static_cast<void>(taken(study->undo()));
    if (turns % 64 == 0)
        static_cast<void>(taken(compact(*study)));
    return fault;
}

std::string Fuzz::Private::checkTrace()
{
    const fs::path file = folder / "fuzz.txt";
    std::ofstream(file, std::ios::binary) << last;
    core::Run run;
    run.number = 1;
    const auto trace = readTraceFile(file, run);
    // A recording with a clock does not hold a run of 1970: refused for that alone.
    const bool clock =
        !trace && (trace.error().message.english().starts_with("run 1 starts at") ||
                   trace.error().message.english().find("in local time") != std::string::npos);
    std::string fault = trace   ? faultOf(*trace.value())
                        : clock ? std::string()
                                : faultOf(trace.error());
    readable += trace || clock;
    if (fault.empty() && turns % 8 == 0)
        fault = checkImport(file, trace ? trace.value().get() : nullptr);
    if (fault.empty() && turns % 8 == 4)
        if (const auto preview = previewTrace(file); !preview)
            fault = faultOf(preview.error());
    return fault;
}

std::string Fuzz::Private::check(const std::string& folderName)
{
    ++turns;
    return folderName == "sheet" ? checkSheet() : checkTrace();
}

Fuzz::Fuzz(const fs::path& corpus, std::uint64_t seed) : d(std::make_unique<Private>())
{
    d->random.seed(seed);
    d->corpus = corpusFrom(corpus);
}

Fuzz::~Fuzz() = default;

std::string Fuzz::turn()
{
    const Sample& sample = d->corpus[d->below(d->corpus.size())];
    d->last = d->mutated(sample);
    // Now and then a file meets a reader that it was not made for.
    return d->check(d->below(32) == 0 ? d->corpus[d->below(d->corpus.size())].folder
                                      : sample.folder);
}

std::string Fuzz::plainTurns()
{
    for (const Sample& sample : d->corpus) {
        d->last = sample.bytes;
        d->turns = 7; // so that the next one imports as well
        if (std::string fault = d->check(sample.folder); !fault.empty())
            return fault;
    }
    return {};
}

const std::string& Fuzz::lastFile() const
{
    return d->last;
}

int Fuzz::readable() const
{
    return d->readable;
}

} // namespace bothways::tests
