// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/verbs/trace_import.h"

#include "app/cli/options.h"
#include "app/cli/warnings.h"
#include "app/wording/numbers.h"
#include "app/wording/recordings.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/trace_import.h"
#include "storage/sheet/run_columns.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>
#include <string_view>

namespace bothways::cli {
namespace {

/// Whether "1,6" may be the number 1.6 as well as the factor 1 and the offset 6: both parts are
/// digits alone, the second without a sign.
bool mayBeOneNumber(std::string_view numbers)
{
    const auto isDigits = [](std::string_view text) {
        return !text.empty() &&
               std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    };
    const std::size_t comma = std::min(numbers.find(','), numbers.size());
    if (comma == numbers.size())
        return false;
    std::string_view whole = numbers.substr(0, comma);
    if (whole.starts_with('-') || whole.starts_with('+'))
        whole.remove_prefix(1);
    const std::string_view next = numbers.substr(comma + 1);
    return isDigits(whole) && isDigits(next.substr(0, next.find(',')));
}

/// "COLUMN=CHANNEL[,FACTOR[,OFFSET]]"
Result<storage::ChannelMapping> oneMapping(const std::string& text)
{
    const auto bad = [&] {
        return wrongUse(core::message("'{}' is not COLUMN=CHANNEL[,FACTOR[,OFFSET]]"_t, text),
                        "--channel");
    };
    auto assignment = splitAssignment(text);
    if (!assignment)
        return bad();
    storage::ChannelMapping mapping;
    mapping.column = assignment.value().first;
    std::string rest = assignment.value().second;
    const std::size_t comma = std::min(rest.find(','), rest.size());
    mapping.channel = rest.substr(0, comma);
    rest.erase(0, std::min(comma + 1, rest.size()));
    if (mayBeOneNumber(rest)) {
        const std::size_t between = rest.find(',');
        const std::string whole = rest.substr(0, between);
        const std::string next =
            rest.substr(between + 1, rest.find(',', between + 1) - between - 1);
        return wrongUse(core::message("'{0}' may be the number {1}.{2}, or the factor {1} and the "
                                      "offset {2}; expected {1}.{2} for the one, {1}.0,{2} for the "
                                      "other"_t,
                                      rest, whole, next),
                        "--channel");
    }
    for (double* number : {&mapping.factor, &mapping.offset}) {
        if (rest.empty())
            break;
        const std::size_t end = std::min(rest.find(','), rest.size());
        const auto value = storage::parseNumber(rest.substr(0, end));
        if (!value)
            return bad();
        *number = value->value;
        rest.erase(0, std::min(end + 1, rest.size()));
    }
    return rest.empty() ? Result<storage::ChannelMapping>(mapping) : bad();
}

/// An Error where the recording has no such column as a mapping names.
Outcome checkColumns(const Language& in, const std::filesystem::path& trace,
                     const std::vector<storage::ChannelMapping>& mapping)
{
    if (mapping.empty())
        return Done{};
    const auto preview = storage::previewTrace(trace);
    if (!preview)
        return preview.error();
    const std::vector<std::string>& columns = preview.value().columns;
    for (const storage::ChannelMapping& one : mapping) {
        if (std::any_of(columns.begin(), columns.end(), [&](const std::string& column) {
                return core::sameWord(column, one.column);
            }))
            continue;
        return wrongUse(
            columns.empty()
                ? core::message("a {} recording has no columns to name"_t, preview.value().format)
                : core::message("{} has no column '{}'; expected one of {}"_t,
                                trace.filename().string(), one.column, quotedList(in, columns)),
            "--channel");
    }
    return Done{};
}

} // namespace

ImportWatch::ImportWatch(const Surroundings& io) : m_io(io) {}

ImportWatch::~ImportWatch()
{
    done();
}

ImportWatch::Progress ImportWatch::progress()
{
    return [this](const std::string& name, double done, double bytesPerSecond) {
        if (m_io.errIsTerminal)
            m_io.err << "\r"
                     << m_io.language.say("{}: {} %, {} MB/s"_t, name,
                                          app::fixed(m_io.language, 100.0 * done, 0),
                                          app::fixed(m_io.language, bytesPerSecond / 1e6, 0))
                     << " \033[K" << std::flush;
    };
}

void ImportWatch::done()
{
    if (m_io.errIsTerminal)
        m_io.err << "\r\033[K" << std::flush;
}

Result<std::vector<storage::ChannelMapping>> mappingFrom(const std::vector<std::string>& texts)
{
    std::vector<storage::ChannelMapping> mapping;
    for (const std::string& text : texts) {
        auto one = oneMapping(text);
        if (!one)
            return one.error();
        mapping.push_back(one.value());
    }
    return mapping;
}

Result<storage::TraceReport> importRecording(storage::StudyFile& file, const RecordingOrder& order,
                                             Surroundings& io)
{
    if (const Outcome known = checkColumns(io.language, order.file, order.mapping); !known)
        return known.error();
    ImportWatch watch(io);
    storage::TraceImportOptions options;
    options.run = order.run;
    options.mapping = order.mapping;
    options.cuts = order.cuts;
    options.clock.ahead_s = -order.shift_s;
    options.start = order.start;
    options.stop = io.stop;
    options.progress = [shown = watch.progress(),
                        name = order.file.filename().string()](double done, double bytesPerSecond) {
        shown(name, done, bytesPerSecond);
    };
    return storage::importTrace(file, order.file, options);
}

std::string whatWasMet(const Language& in, const storage::TraceReport& report,
                       const std::string& name)
{
    std::string text = app::wording::imported(in, name, report) + "\n";
    for (const std::string& met : app::wording::whatWasMet(in, report))
        text += "  " + met + "\n";
    return text;
}

void warnOfASecondCopy(const storage::StudyFile& file, core::RecordingId imported, Surroundings& io)
{
    const auto all = storage::recordings(file);
    if (!all)
        return;
    const auto withId = [&](const storage::RecordingInfo& one) { return one.id == imported; };
    const auto mine = std::find_if(all.value().begin(), all.value().end(), withId);
    if (mine == all.value().end())
        return;
    const auto twice = [&](const storage::RecordingInfo& other) {
        return other.id != mine->id && other.name == mine->name && other.first == mine->first &&
               other.from_s == mine->from_s && other.to_s == mine->to_s &&
               other.rows == mine->rows && other.samples == mine->samples;
    };
    if (std::any_of(all.value().begin(), all.value().end(), twice))
        warn(io.language.say("the study had the recording {} already, with the same times and "
                             "rows; 'bothways undo {}' takes the second one out again"_t,
                             mine->name, file.path().filename().string()),
             io);
}

} // namespace bothways::cli
