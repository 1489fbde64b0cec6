// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: all that must hold for a run, and for runs together, in one place.
#include "storage/sheet/run_rules.h"

#include "core/base/decimal_text.h"
#include "core/base/utf8.h"
#include "core/study/clock.h"
#include "core/study/parts.h"
#include "core/study/rule.h"
#include "storage/bytes/csv.h"
#include "storage/sheet/run_columns.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <iterator>
#include <map>
#include <set>

namespace bothways::storage {
namespace {

using core::message;
using core::Message;
using core::Run;
using core::Study;

/// Collects the faults of one run.
class Faults {
public:
    void add(std::string_view column, core::Message message)
    {
        m_faults.push_back({0, std::string(column), std::move(message)});
    }
    void addIf(bool wrong, std::string_view column, core::Message message)
    {
        if (wrong)
            add(column, std::move(message));
    }
    std::vector<RunFault> take() { return std::move(m_faults); }

private:
    std::vector<RunFault> m_faults;
};

/// "output_w@left" is a number of the same range as "output_w".
void checkParts(const Run& run, Faults& faults)
{
    for (const auto& [name, text] : run.extra) {
        const std::string canonical = canonicalColumn(name);
        const core::PartedName parted = core::partedName(canonical);
        if (parted.part.empty() || !core::mayHavePart(parted.base) || csv::isBlankText(text))
            continue;
        for (const NumberColumn& column : numberColumns()) {
            if (column.name != parted.base)
                continue;
            const auto value = core::notedNumber(csv::trimmed(text));
            if (!value)
                faults.add(name, message("{} is not a finite number; expected {}"_t, inQuotes(text),
                                         expectedNumber(column)));
            else if (!isPossible(column, *value))
                faults.add(name, message("{} is impossible; expected {}"_t, inQuotes(text),
                                         expectedNumber(column)));
        }
    }
}

void checkNumbers(const Run& run, Faults& faults)
{
    for (const NumberColumn& column : numberColumns())
        if (const auto& value = run.*column.field;
            column.factor == 1.0 && value && !isPossible(column, *value))
            faults.add(column.name,
                       message("{} is impossible; expected {}"_t,
                               core::decimalText(formatNumber(*value)), expectedNumber(column)));
    checkParts(run, faults);
    for (const auto& [name, on_s] : run.accessory_on_s) {
        const std::string column = name + "_on_s";
        faults.addIf(!std::isfinite(on_s) || std::abs(on_s) > 1e6, column,
                     "expected seconds from the run's start"_t);
        faults.addIf(timedAccessoryOf(canonicalColumn(column)) != name, column,
                     "an accessory's name has small letters and no blanks"_t);
    }
    faults.addIf(run.number < 0 || run.number > kLargestRunNumber, "run",
                 message("expected a whole number from 1 to {}"_t, kLargestRunNumber));
}

Message impossibleConsumption(double value)
{
    return message("{} is impossible; expected a consumption from 0.0001 to 1000000 per 100 km"_t,
                   core::decimalText(formatNumber(value)));
}

void checkConsumption(const Run& run, Faults& faults)
{
    if (!run.consumption) {
        if (run.counted() && csv::isBlankText(run.trace))
            faults.add("l_per_100km", "is empty; a counted run needs its consumption"_t);
        return;
    }
    const core::Consumption& given = *run.consumption;
    const std::string_view column = core::unitName(given.unit);
    if (!std::isfinite(given.value) || given.value <= 0.0) {
        faults.add(column, std::isfinite(given.value)
                               ? message("{} is not above 0; expected a number above 0"_t,
                                         core::decimalText(formatNumber(given.value)))
                               : "is not a finite number; expected a number above 0"_t);
        return;
    }
    const auto possible = [](double value) {
        return value >= kSmallestConsumption && value <= kLargestConsumption;
    };
    if (core::needsDistance(given.unit) && !run.distance_km) {
        faults.add("distance_km", message("is empty; {} needs a distance"_t, column));
        return;
    }
    if (run.distance_km && !(*run.distance_km > 0.0))
        return; // said already
    const auto inLitres = [&](double value) {
        return core::toLPer100km(value, given.unit, run.distance_km.value_or(1.0));
    };
    if (!possible(inLitres(given.value)))
        faults.add(column, impossibleConsumption(given.value));
    if (run.control && std::isfinite(*run.control) && *run.control > 0.0 &&
        !possible(inLitres(*run.control)))
        faults.add("control", impossibleConsumption(*run.control));
}

void checkDiscard(const Run& run, Faults& faults)
{
    if (!run.discard)
        return;
    const std::string& reason = run.discard->reason;
    if (csv::isBlankText(reason))
        faults.add("reason", "is empty; a discarded run needs a rule's name or 'other'"_t);
    else if (reason == "other")
        faults.addIf(csv::isBlankText(run.discard->evidence), "evidence",
                     "is empty; the reason 'other' needs words"_t);
    else if (!core::ruleFromName(reason))
        faults.add("reason", message("{} is no reason; expected a rule's name or 'other'"_t,
                                     inQuotes(reason)));
}

void checkTexts(const Run& run, Faults& faults)
{
    faults.addIf(csv::isBlankText(run.configuration), "configuration",
                 "is empty; expected a name"_t);
    faults.addIf(csv::isBlankText(run.direction), "direction", "is empty; expected a name"_t);
    const auto storable = [&](std::string_view column, std::string_view text) {
        faults.addIf(!core::isStorableText(text), column, "is not UTF-8 text"_t);
        faults.addIf(text.size() > kLongestText, column,
                     message("is too long; expected at most {} characters"_t, kLongestText));
    };
    for (const auto& [column, name] :
         {std::pair<const char*, const std::string&>("configuration", run.configuration),
          {"direction", run.direction}})
        if (name.size() > kMostNameBytes)
            faults.add(column, message("has a name of {} bytes; expected at most {}"_t, name.size(),
                                       kMostNameBytes));
    storable("configuration", run.configuration);
    storable("direction", run.direction);
    storable("pair", run.pair_mark);
    if (run.discard)
        storable("evidence", run.discard->evidence);
    for (const TextColumn& column : textColumns())
        storable(column.name, run.*column.field);
    for (const core::Mark& mark : run.marks) {
        storable("marks", mark.word + mark.words);
        faults.addIf(!std::isfinite(mark.at_s) || mark.word.empty() ||
                         mark.word.find_first_of(" \t\r\n") != std::string::npos,
                     "marks", "expected seconds and a word for each mark"_t);
    }
    std::set<std::string> names;
    for (const auto& [name, value] : run.extra) {
        storable(name, name + value);
        faults.addIf(name.empty() || isKnownColumn(canonicalColumn(name)), name,
                     "is not a name for a column of one's own"_t);
        faults.addIf(!names.insert(canonicalColumn(name)).second, name, "is there twice"_t);
    }
}

/// The spelling in which `known` has the word already; null where it has not.
const std::string* spelling(const std::vector<std::string>& known, std::string_view word)
{
    for (const std::string& name : known)
        if (core::sameWord(name, word))
            return &name;
    return nullptr;
}

/// Runs of a study, without copying them.
using Runs = std::span<const Run* const>;

/// In order of first appearance, each once. A study has two at most, so the search ends there.
std::vector<std::string> namesOf(Runs runs, std::string Run::*field)
{
    constexpr std::size_t kMost = 2;
    std::vector<std::string> names;
    for (std::size_t i = 0; i < runs.size() && names.size() < kMost; ++i)
        if (!spelling(names, runs[i]->*field))
            names.push_back(runs[i]->*field);
    return names;
}

/// Of the numbers of `added` those that a run of `existing` has, ascending.
std::vector<int> numbersTaken(Runs existing, std::span<const Run> added)
{
    std::vector<int> asked; // few beside the runs of a study
    for (const Run& run : added)
        asked.push_back(run.number);
    std::sort(asked.begin(), asked.end());
    std::vector<int> numbers;
    for (const Run* run : existing)
        if (std::binary_search(asked.begin(), asked.end(), run->number))
            numbers.push_back(run->number);
    std::sort(numbers.begin(), numbers.end());
    return numbers;
}

/// The names that a study has, or will have: those of `existing`, and of the added ones those that
/// most runs have, so that one slip of the pen is blamed and not the ten runs after it. In order of
/// first appearance.
std::vector<std::string> twoNames(Runs existing, std::span<const Run> added,
                                  std::string Run::*field)
{
    std::vector<std::string> names = namesOf(existing, field);
    std::vector<std::string> more;
    std::vector<std::size_t> runs; // that have it, a number for each of `more`
    for (const Run& run : added) {
        const std::string name(csv::trimmed(run.*field));
        if (name.empty() || spelling(names, name))
            continue;
        const std::string* known = spelling(more, name);
        if (known) {
            ++runs[static_cast<std::size_t>(known - more.data())];
        } else {
            more.push_back(name);
            runs.push_back(1);
        }
    }
    while (!more.empty() && names.size() + more.size() > 2) {
        const auto rarest = std::min_element(runs.rbegin(), runs.rend()); // of equals the last
        const auto place = runs.rend() - rarest - 1;
        runs.erase(runs.begin() + place);
        more.erase(more.begin() + place);
    }
    names.insert(names.end(), more.begin(), more.end());
    return names;
}

void checkNames(Runs existing, std::span<const Run> added, std::string_view column,
                std::string Run::*field, std::vector<RunFault>& faults)
{
    const bool configuration = field == &Run::configuration;
    const auto third = configuration ? "{} is a third configuration; expected {} or {}"_t
                                     : "{} is a third direction; expected {} or {}"_t;
    const std::vector<std::string> known = twoNames(existing, added, field);
    for (std::size_t i = 0; i < added.size(); ++i) {
        const std::string name(csv::trimmed(added[i].*field));
        if (!name.empty() && !spelling(known, name))
            faults.push_back(
                {i, std::string(column),
                 message(third, inQuotes(name), inQuotes(known[0]), inQuotes(known[1]))});
    }
}

void checkRunNumbers(Runs existing, std::span<const Run> added, std::span<const int> lines,
                     std::vector<RunFault>& faults)
{
    if (std::all_of(added.begin(), added.end(), [](const Run& run) { return run.number == 0; }))
        return;
    const std::vector<int> inStudy = numbersTaken(existing, added);
    std::map<int, Message> used; // by number: what to say of another run with it
    for (std::size_t i = 0; i < added.size(); ++i) {
        const int number = added[i].number;
        if (number == 0)
            continue;
        if (std::binary_search(inStudy.begin(), inStudy.end(), number)) {
            faults.push_back({i, "run",
                              message("{} is given already in the study; expected another "
                                      "number"_t,
                                      number)});
            continue;
        }
        const Message again =
            i < lines.size()
                ? message("{} is given already on line {}; expected another number"_t, number,
                          lines[i])
                : message("{} is given already among these runs; expected another number"_t,
                          number);
        if (const auto [at, isNew] = used.emplace(number, again); !isNew)
            faults.push_back({i, "run", at->second});
    }
}

void checkUnits(Runs existing, std::span<const Run> added, std::vector<RunFault>& faults)
{
    std::optional<bool> electric;
    const auto differs = [&electric](const Run& run) {
        if (!run.consumption)
            return false;
        const bool is = run.consumption->unit == core::ConsumptionUnit::kwhPer100km;
        if (!electric)
            electric = is;
        return *electric != is;
    };
    for (std::size_t i = 0; i < existing.size() && !electric; ++i)
        static_cast<void>(differs(*existing[i]));
    for (std::size_t i = 0; i < added.size(); ++i)
        if (differs(added[i]))
            faults.push_back(
                {i, std::string(core::unitName(added[i].consumption->unit)),
                 "fuel and kWh cannot be compared; expected one of them in a study"_t});
}

void checkOffsets(Runs existing, std::span<const Run> added, std::vector<RunFault>& faults)
{
    std::optional<bool> has;
    if (!existing.empty())
        has = existing.front()->start.utc_offset_min.has_value();
    for (std::size_t i = 0; i < added.size(); ++i) {
        if (added[i].start.us == kUnknownStart_us)
            continue;
        const bool given = added[i].start.utc_offset_min.has_value();
        if (!has)
            has = given;
        if (given != *has)
            faults.push_back(
                {i, "start",
                 *has ? "has no offset from UTC where the other runs have one; expected one "
                        "like +02:00 or Z on all or on none"_t
                      : "has an offset from UTC where the other runs have none; expected one "
                        "on all or on none"_t});
    }
}

/// The marks of pairs over all runs.
class PairCheck {
public:
    PairCheck(Runs existing, std::span<const Run> added) : m_added(added)
    {
        if (std::all_of(added.begin(), added.end(),
                        [](const Run& run) { return run.pair_mark.empty(); }) &&
            std::all_of(existing.begin(), existing.end(),
                        [](const Run* run) { return run->pair_mark.empty(); }))
            return;
        m_sorted.assign(existing.begin(), existing.end());
        for (const Run& run : added)
            m_sorted.push_back(&run);
        std::stable_sort(m_sorted.begin(), m_sorted.end(),
                         [](const Run* a, const Run* b) { return a->start.us < b->start.us; });
        for (std::size_t i = 0; i < m_sorted.size(); ++i)
            if (!m_sorted[i]->pair_mark.empty())
                m_members[m_sorted[i]->pair_mark].push_back(i);
        m_orderKnown = std::none_of(m_sorted.begin(), m_sorted.end(), [](const Run* run) {
            return run->start.us == kUnknownStart_us || run->configuration.empty();
        });
    }

    void run(std::vector<RunFault>& faults) const
    {
        for (const auto& [mark, members] : m_members) {
            if (auto why = wrong(mark, members))
                faults.push_back({reportAt(members), "pair", *std::move(why)});
        }
    }

private:
    [[nodiscard]] std::optional<Message> wrong(const std::string& mark,
                                               const std::vector<std::size_t>& members) const
    {
        if (members.size() == 1)
            return message("{} is on one run alone; expected on exactly two, an out and a "
                           "return run"_t,
                           inQuotes(mark));
        if (members.size() != 2)
            return message("{} is on {} runs; expected on exactly two, an out and a return run"_t,
                           inQuotes(mark), members.size());
        const Run& one = *m_sorted[members[0]];
        const Run& other = *m_sorted[members[1]];
        if (!one.direction.empty() && core::sameWord(one.direction, other.direction))
            return message("{} ties two runs in one direction; expected an out and a "
                           "return run"_t,
                           inQuotes(mark));
        if (m_orderKnown && !inOneBlock(m_sorted, members[0], members[1]))
            return message("{} ties runs of two blocks; expected two of one block, without "
                           "a switch or a new day between them"_t,
                           inQuotes(mark));
        return std::nullopt;
    }

    /// The last of the members that was added; else the first added run (which came between).
    [[nodiscard]] std::size_t reportAt(const std::vector<std::size_t>& members) const
    {
        std::size_t at = 0;
        for (const std::size_t member : members)
            if (const auto i = addedIndex(m_sorted[member]))
                at = std::max(at, *i);
        return at;
    }

    [[nodiscard]] std::optional<std::size_t> addedIndex(const Run* run) const
    {
        const std::less<const Run*> before;
        if (before(run, m_added.data()) || !before(run, m_added.data() + m_added.size()))
            return std::nullopt;
        return static_cast<std::size_t>(run - m_added.data());
    }

    std::span<const Run> m_added;
    std::vector<const Run*> m_sorted;
    std::map<std::string, std::vector<std::size_t>> m_members;
    bool m_orderKnown = true;
};

} // namespace

std::vector<RunFault> ownFaults(const Run& run)
{
    Faults faults;
    checkTexts(run, faults);
    checkNumbers(run, faults);
    checkConsumption(run, faults);
    checkDiscard(run, faults);
    return faults.take();
}

std::vector<const Run*> othersIn(const Study& study, core::RunId except)
{
    std::vector<const Run*> others;
    others.reserve(study.runs.size());
    for (const Run& run : study.runs)
        if (except == core::RunId{} || run.id != except)
            others.push_back(&run);
    return others;
}

std::vector<RunFault> faultsAmong(const Study& existing, std::span<const Run> added,
                                  std::span<const int> sheetLines)
{
    const auto runs = othersIn(existing, {});
    std::vector<RunFault> faults = faultsAmong(runs, added, sheetLines);
    const auto units = fuelFaults(existing.properties.fuel, runs, added);
    faults.insert(faults.end(), units.begin(), units.end());
    return faults;
}

std::vector<RunFault> faultsAmong(Runs existing, std::span<const Run> added,
                                  std::span<const int> sheetLines)
{
    std::vector<RunFault> faults;
    checkNames(existing, added, "configuration", &Run::configuration, faults);
    checkNames(existing, added, "direction", &Run::direction, faults);
    checkRunNumbers(existing, added, sheetLines, faults);
    checkUnits(existing, added, faults);
    checkOffsets(existing, added, faults);
    PairCheck(existing, added).run(faults);
    return faults;
}

std::vector<RunFault> fuelFaults(core::Fuel named, Runs existing, std::span<const Run> added)
{
    std::vector<RunFault> faults;
    const bool runsSay = std::any_of(existing.begin(), existing.end(),
                                     [](const Run* run) { return run->consumption.has_value(); });
    if (runsSay || named == core::Fuel::petrol) // petrol: or nobody named one
        return faults;
    const bool electric = named == core::Fuel::electric;
    for (std::size_t i = 0; i < added.size(); ++i) {
        const auto& given = added[i].consumption;
        if (given && (given->unit == core::ConsumptionUnit::kwhPer100km) != electric)
            faults.push_back({i, std::string(core::unitName(given->unit)),
                              electric ? "the study's fuel is electric; expected kwh_per_100km, "
                                         "or another fuel of the study first"_t
                                       : "the study's fuel is not electric; expected a consumption "
                                         "of fuel, or fuel=electric of the study first"_t});
    }
    return faults;
}

std::optional<RunFault> tooManyOwnColumns(const Study& existing, std::span<const Run> added)
{
    std::set<std::string> names;
    std::optional<std::string> over; // a name that was new when there was no room for one
    const auto take = [&](const std::string& name) {
        if (names.insert(core::inSmallLetters(name)).second && names.size() > kMostOwnColumns)
            over = name;
    };
    const auto takeAll = [&take](const Run& run) {
        for (const auto& [name, value] : run.extra)
            take(name);
        for (const auto& [name, on_s] : run.accessory_on_s)
            take(name + "_on_s");
    };
    std::for_each(existing.runs.begin(), existing.runs.end(), takeAll);
    over.reset(); // from before there was a bound
    for (std::size_t i = 0; i < added.size(); ++i) {
        takeAll(added[i]);
        if (over)
            return RunFault{i, *std::move(over),
                            message("is one column of one's own too many; expected at most {} in a "
                                    "study"_t,
                                    kMostOwnColumns)};
    }
    return std::nullopt;
}

Spellings Spellings::of(const Study& study)
{
    return of(othersIn(study, {}));
}

Spellings Spellings::of(Runs runs)
{
    Spellings known{namesOf(runs, &Run::configuration), namesOf(runs, &Run::direction), {}};
    known.addExtrasOf(runs);
    return known;
}

Spellings Spellings::of(Runs runs, const Run& asking)
{
    Spellings known{namesOf(runs, &Run::configuration), namesOf(runs, &Run::direction), {}};
    if (!asking.extra.empty())
        known.addExtrasOf(runs);
    return known;
}

void Spellings::addExtrasOf(Runs runs)
{
    for (const Run* run : runs)
        for (const auto& [name, value] : run->extra)
            extras.emplace(core::inSmallLetters(name), name);
}

Run normalised(Run run, Spellings& spellings)
{
    const auto spell = [](std::string& name, std::vector<std::string>& known) {
        name = std::string(csv::trimmed(name));
        if (const std::string* as = spelling(known, name))
            name = *as;
        else if (!name.empty())
            known.push_back(name);
    };
    spell(run.configuration, spellings.configurations);
    spell(run.direction, spellings.directions);
    run.setting = std::string(csv::trimmed(run.setting));
    run.pair_mark = std::string(csv::trimmed(run.pair_mark));
    if (run.discard)
        run.discard->reason = canonicalColumn(run.discard->reason);
    for (core::Mark& mark : run.marks)
        mark.words = std::string(csv::trimmedLines(mark.words));
    std::map<std::string, double> on_s;
    for (const auto& [name, seconds] : run.accessory_on_s)
        on_s.emplace(canonicalColumn(name), seconds);
    run.accessory_on_s = std::move(on_s);
    std::erase_if(run.extra, [](const auto& column) { return column.second.empty(); });
    for (auto& [name, value] : run.extra) {
        name = std::string(csv::trimmed(name));
        if (!name.empty())
            name = spellings.extras.emplace(core::inSmallLetters(name), name).first->second;
    }
    if (run.consumption && std::isfinite(run.consumption->value)) {
        core::Consumption& given = *run.consumption;
        if (const auto shown = parseNumber(formatNumber(given.value, given.decimals)))
            given.decimals = shown->decimals;
    }
    return run;
}

void numberRuns(const Study& existing, std::span<Run> added)
{
    std::vector<int> known; // sorted: thousands of them are asked for one
    known.reserve(existing.runs.size());
    for (const Run& run : existing.runs)
        known.push_back(run.number);
    if (!std::is_sorted(known.begin(), known.end()))
        std::sort(known.begin(), known.end());
    int last = known.empty() ? 0 : std::max(known.back(), 0);
    std::set<int> used;
    for (const Run& run : added)
        used.insert(run.number);
    for (Run& run : added) {
        if (run.number == 0) {
            do
                last = last < kLargestRunNumber ? last + 1 : 1;
            while (used.contains(last) || std::binary_search(known.begin(), known.end(), last));
            run.number = last;
            used.insert(last);
        } else {
            last = run.number;
        }
    }
}

core::Error inOne(std::vector<core::Error> errors)
{
    core::Error first = std::move(errors.front());
    first.others.assign(std::make_move_iterator(errors.begin() + 1),
                        std::make_move_iterator(errors.end()));
    return first;
}

core::Result<std::vector<Run>> admitted(const Study& existing, std::vector<Run> given,
                                        const FaultPlace& place)
{
    using core::Error;
    using core::ErrorCode;
    Spellings spellings = Spellings::of(existing);
    for (Run& run : given)
        run = normalised(std::move(run), spellings);
    if (given.size() + existing.runs.size() > kMostRuns)
        return Error{
            ErrorCode::badInput, message("a study holds at most {} runs"_t, kMostRuns), {}};
    std::vector<Error> errors;
    const auto note = [&](std::size_t run, const RunFault& wrong) {
        errors.push_back(Error{ErrorCode::badInput, wrong.message, place(run, wrong.column)});
    };
    for (std::size_t i = 0; i < given.size(); ++i)
        for (const RunFault& wrong : ownFaults(given[i]))
            note(i, wrong);
    for (const RunFault& wrong : faultsAmong(existing, given))
        note(wrong.run, wrong);
    if (const auto wrong = tooManyOwnColumns(existing, given))
        note(wrong->run, *wrong);
    if (!errors.empty())
        return inOne(std::move(errors));
    numberRuns(existing, given);
    return given;
}

bool inOneBlock(std::span<const Run* const> sorted, std::size_t a, std::size_t b)
{
    const auto [first, last] = std::minmax(a, b);
    for (std::size_t i = first; i < last; ++i) {
        const Run& next = *sorted[i + 1];
        if (core::beginsBlock(sorted[i], next.configuration, next.start))
            return false;
    }
    return true;
}

} // namespace bothways::storage
