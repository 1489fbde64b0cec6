// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/language.h"

#include "app/wording/numbers.h"
#include "app/wording/runs.h"
#include "app/wording/translations.h"
#include "app/wording/visible_text.h"
#include "core/base/place_words.h"
#include "storage/bytes/file_bytes.h"

#include <algorithm>
#include <cstring>
#include <vector>

namespace bothways::app {

Language::Language() : m_tag("en") {}

std::optional<Language> Language::named(std::string_view tag)
{
    const std::string_view first = tag.substr(0, tag.find_first_of("_-.@"));
    if (first == "en" || first == "C" || first == "POSIX")
        return Language();
    for (const TranslatedSentences& known : translatedSentences())
        if (known.tag == first) {
            Language language;
            language.m_tag = known.tag;
            language.m_sentences = known.sentences;
            language.m_numbers = {language.say(".##decimal sign"_t),
                                  language.say(",##between thousands"_t)};
            return language;
        }
    return std::nullopt;
}

Language Language::ofEnvironment(const std::function<std::string(const char*)>& variable)
{
    for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"})
        if (const std::string value = variable(name); !value.empty())
            return named(value).value_or(Language());
    return {};
}

std::vector<std::string_view> Language::all()
{
    std::vector<std::string_view> tags{"en"};
    for (const TranslatedSentences& known : translatedSentences())
        tags.push_back(known.tag);
    return tags;
}

std::string_view Language::translated(const char* key) const
{
    const auto found = std::lower_bound(m_sentences.begin(), m_sentences.end(), key,
                                        [](const auto& sentence, const char* asked) {
                                            return std::strcmp(sentence.first, asked) < 0;
                                        });
    if (found != m_sentences.end() && std::strcmp(found->first, key) == 0)
        return found->second;
    return core::shownPart(key);
}

std::string Language::value(const core::Value& value) const
{
    return std::visit(
        [this](const auto& kind) -> std::string {
            using Kind = std::remove_cvref_t<decltype(kind)>;
            if constexpr (std::is_same_v<Kind, std::string>)
                return m_forPeople ? visibleText(kind) : kind;
            else if constexpr (std::is_same_v<Kind, long long>)
                return std::to_string(kind);
            else if constexpr (std::is_same_v<Kind, double>)
                return shortest(*this, kind);
            else if constexpr (std::is_same_v<Kind, core::Text<0>>)
                return std::string(translated(kind.key()));
            else
                return say(*kind);
        },
        value.get());
}

std::string Language::say(const core::Message& message) const
{
    std::vector<std::string> values;
    values.reserve(message.values.size());
    for (const core::Value& given : message.values)
        values.push_back(value(given));
    return core::filled(translated(message.key), values);
}

std::string Language::place(const core::Place& place) const
{
    core::Place shownPlace = place;
    if (place.file == storage::kStandardInput)
        shownPlace.file = say("standard input"_t);
    else if (m_forPeople)
        shownPlace.file = visibleText(place.file);
    return core::placeIn(shownPlace, [this](const core::Message& part) { return say(part); });
}

namespace {

std::string behind(const std::string& place, const std::string& words)
{
    return place.empty() ? words : place + ": " + words;
}

/// Faults that differ in their line, or in their run, alone; or, where they are many, in what was
/// found there.
struct AlikeFaults {
    std::string words; ///< the message, said
    const core::Error* first = nullptr;
    std::vector<int> lines, runs;
    std::size_t more = 0; ///< that say something else than `words`
};

/// So many faults of one kind are worth a line each: what is wrong in one cell is mended there.
/// More of them have one cause, like a column of dates in a form that is not known.
constexpr std::size_t kFaultsToldApart = 5;

bool alike(const core::Place& a, const core::Place& b)
{
    return a.file == b.file && a.column == b.column && a.column_number == b.column_number &&
           a.new_run == b.new_run && (a.line == 0) == (b.line == 0) && (a.run == 0) == (b.run == 0);
}

void gather(const Language& in, const core::Error& error, std::vector<AlikeFaults>& all)
{
    const std::string words = in.say(error.message);
    auto known = std::find_if(all.begin(), all.end(), [&](const AlikeFaults& one) {
        return one.words == words && alike(one.first->where, error.where) &&
               (error.where.line != 0 || error.where.run != 0);
    });
    if (known == all.end())
        known = all.insert(all.end(), {words, &error, {}, {}});
    if (error.where.line != 0)
        known->lines.push_back(static_cast<int>(error.where.line));
    else if (error.where.run != 0)
        known->runs.push_back(error.where.run);
    for (const core::Error& other : error.others)
        gather(in, other, all);
}

/// The same sentence, sentences within it too, whatever else its values are.
bool sameSentence(const core::Message& a, const core::Message& b)
{
    const auto nested = [](const core::Value& value) {
        const auto* message = std::get_if<std::shared_ptr<const core::Message>>(&value.get());
        return message ? message->get() : nullptr;
    };
    return std::strcmp(a.key, b.key) == 0 &&
           std::equal(a.values.begin(), a.values.end(), b.values.begin(), b.values.end(),
                      [&](const core::Value& one, const core::Value& other) {
                          const core::Message* const inOne = nested(one);
                          const core::Message* const inOther = nested(other);
                          return inOne && inOther ? sameSentence(*inOne, *inOther)
                                                  : !inOne && !inOther;
                      });
}

/// In lines of one column, or of files that are whole.
bool ofOneKind(const core::Error& a, const core::Error& b)
{
    core::Place other = b.where;
    if (a.where.line == 0 && a.where.run == 0)
        other.file = a.where.file;
    return alike(a.where, other) && sameSentence(a.message, b.message);
}

/// Many faults of one kind become the first of them, with the lines of all.
std::vector<AlikeFaults> withoutFloods(std::vector<AlikeFaults> all)
{
    struct Kind {
        const core::Error* first;
        std::size_t faults = 0;
        std::optional<std::size_t> kept = {};
    };
    std::vector<Kind> kinds;
    std::vector<std::size_t> kindOf;
    for (const AlikeFaults& one : all) {
        auto known = std::ranges::find_if(
            kinds, [&](const Kind& kind) { return ofOneKind(*kind.first, *one.first); });
        if (known == kinds.end())
            known = kinds.insert(kinds.end(), {one.first});
        ++known->faults;
        kindOf.push_back(static_cast<std::size_t>(known - kinds.begin()));
    }
    std::vector<AlikeFaults> kept;
    for (std::size_t i = 0; i < all.size(); ++i) {
        Kind& kind = kinds[kindOf[i]];
        if (kind.faults <= kFaultsToldApart || !kind.kept) {
            kind.kept = kept.size();
            kept.push_back(std::move(all[i]));
            continue;
        }
        AlikeFaults& first = kept[*kind.kept];
        ++first.more;
        first.lines.insert(first.lines.end(), all[i].lines.begin(), all[i].lines.end());
        first.runs.insert(first.runs.end(), all[i].runs.begin(), all[i].runs.end());
    }
    return kept;
}

} // namespace

std::string Language::describeFirst(const core::Error& error) const
{
    return behind(error.where.empty() ? "" : place(error.where), say(error.message));
}

std::string Language::describe(const core::Error& error) const
{
    std::vector<AlikeFaults> all;
    gather(*this, error, all);
    std::string text;
    for (const AlikeFaults& one : withoutFloods(std::move(all))) {
        core::Place where = one.first->where;
        std::string runs;
        if (one.lines.size() > 1 || one.runs.size() > 1) {
            if (where.file == storage::kStandardInput)
                where.file = say("standard input"_t);
            if (!one.lines.empty())
                where.file += (where.file.empty() ? "" : ":") + wording::runList(one.lines);
            else
                runs = wording::runsWords(*this, one.runs);
            where.line = 0;
            where.run = 0;
        }
        if (!runs.empty()) { // between the file and the column
            core::Place rest = where;
            rest.file.clear();
            where.column.clear();
            where.column_number = 0;
            runs = (where.empty() ? "" : place(where) + ": ") + runs +
                   (rest.empty() ? "" : ": " + place(rest));
        } else if (!where.empty()) {
            runs = place(where);
        }
        text += (text.empty() ? "" : "\n") + behind(runs, one.words);
        if (one.more > 0)
            text += say(" (and {} more like it)"_t, one.more);
    }
    return text;
}

} // namespace bothways::app
