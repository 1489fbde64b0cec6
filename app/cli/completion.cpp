// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/completion.h"

#include "app/cli/program.h"
#include "app/cli/verbs/verbs.h"
#include "core/study/limits.h"
#include "core/study/property_names.h"
#include "core/study/rule.h"
#include "storage/recordings/recordings.h"
#include "storage/sheet/column_names.h"
#include "storage/sheet/ordinary_sheet.h"
#include "storage/study/study_file.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>
#include <string_view>

namespace bothways::cli {
namespace {

/// A study or sheet larger than this is not looked into: nobody waits for a tab.
constexpr std::uintmax_t kLargestLookedInto = 32U << 20U;

class Completion {
public:
    /// @param spoken  the parser in the reader's language, for what is said of an option
    Completion(std::vector<std::string> words, Surroundings& io, const CLI::App& spoken)
        : m_io(io), m_spoken(spoken), m_words(std::move(words))
    {
        if (m_words.empty())
            m_words.emplace_back();
        m_typed = m_words.back();
        m_words.pop_back();
    }

    void answer(const CLI::App& program)
    {
        const auto verb = std::find_if(m_words.begin(), m_words.end(),
                                       [](const std::string& word) { return isVerb(word); });
        if (valueOf(m_words.empty() ? std::string() : m_words.back(), program, {}))
            return;
        if (verb == m_words.end() || *verb == "help") {
            verbsAndOptions(program, verb != m_words.end());
            return;
        }
        m_verb = *verb;
        m_after.assign(verb + 1, m_words.end());
        ofVerb(*program.get_subcommand(m_verb), program);
    }

private:
    static bool isVerb(std::string_view word)
    {
        return std::ranges::any_of(allVerbs(), [&](const Verb& verb) { return verb.name == word; });
    }

    void offer(const std::string& value, const std::string& what = {})
    {
        const bool more = value != m_typed || !value.ends_with('=');
        if (!value.starts_with(m_typed) || !more || !m_said.insert(value).second)
            return;
        std::string words = what.substr(0, what.find('\n'));
        std::ranges::replace(words, '\t', ' ');
        m_io.out << value << (words.empty() ? "" : "\t" + words) << "\n";
    }
    void offerFiles(std::string_view kind) { m_io.out << ':' << kind << "\n"; }

    void verbsAndOptions(const CLI::App& program, bool forHelp)
    {
        for (const Verb& verb : allVerbs())
            offer(verb.name, m_io.language.say(verb.what));
        if (!forHelp && m_typed.starts_with('-'))
            options(program, m_spoken);
    }

    void options(const CLI::App& app, const CLI::App& spoken)
    {
        for (const CLI::Option* option : app.get_options())
            for (const std::string& name : option->get_lnames()) {
                const CLI::Option* said = spoken.get_option_no_throw("--" + name);
                offer("--" + name, (said ? said : option)->get_description());
            }
    }

    /// The option of a word of the command line; null: it is none, or takes nothing.
    static const CLI::Option* takingOption(const std::string& word, const CLI::App& app)
    {
        const CLI::Option* option =
            word.starts_with("--") ? app.get_option_no_throw(word) : nullptr;
        return option && option->get_items_expected_max() > 0 ? option : nullptr;
    }

    void ofVerb(const CLI::App& verb, const CLI::App& program)
    {
        const std::string before = m_after.empty() ? std::string() : m_after.back();
        if (valueOf(before, verb, m_verb))
            return;
        if (m_typed.starts_with('-')) {
            options(verb, *m_spoken.get_subcommand(m_verb));
            options(program, m_spoken);
            return;
        }
        std::vector<const CLI::Option*> places;
        for (const CLI::Option* option : verb.get_options())
            if (option->get_positional())
                places.push_back(option);
        std::size_t at = 0;
        for (std::size_t i = 0; i < m_after.size(); ++i) {
            if (takingOption(m_after[i], verb) || takingOption(m_after[i], program))
                ++i; // and its value
            else if (!m_after[i].starts_with("--") && at < places.size() &&
                     places[at]->get_items_expected_max() == 1)
                ++at;
        }
        if (at < places.size())
            place(places[at]->get_name(true));
    }

    /// @return  whether `option` wants a value; the values are said then
    bool valueOf(const std::string& option, const CLI::App& app, std::string_view verb)
    {
        const CLI::Option* wants = takingOption(option, app);
        if (!wants)
            return false;
        const std::string name = wants->get_lnames().front();
        if (name == "language")
            for (const std::string_view language : Language::all())
                offer(std::string(language));
        else if (name == "unit")
            units();
        else if (name == "reason" && verb == "discard")
            rules(true);
        else if (name == "column")
            headers();
        else if (name == "set" || name == "limit")
            properties(name == "limit");
        else if (name == "baseline" || name == "configuration")
            names(&core::Run::configuration);
        else if (name == "run")
            runs();
        else if (name == "recording")
            recordings();
        else if (name == "noise-from")
            offerFiles("inputs");
        else if (name == "trace" || name == "output" || name == "to" || name == "card")
            offerFiles("files");
        else if (name == "fuel")
            fuels({});
        else
            choices(wants->get_type_name());
        return true;
    }

    /// "WORD:{a,b}": the words that the parser takes.
    void choices(const std::string& type)
    {
        const std::size_t begin = type.find('{');
        if (begin == std::string::npos || !type.ends_with('}'))
            return;
        std::string_view rest = std::string_view(type).substr(begin + 1);
        rest.remove_suffix(1);
        while (!rest.empty()) {
            const std::size_t end = std::min(rest.find(','), rest.size());
            offer(std::string(rest.substr(0, end)));
            rest.remove_prefix(std::min(end + 1, rest.size()));
        }
    }

    /// A word without a dash, by the name that help gives its place.
    void place(const std::string& name)
    {
        if (name == "STUDY")
            offerFiles("studies");
        else if (name == "FILE")
            offerFiles("inputs");
        else if (name == "SHEET")
            offerFiles("sheets");
        else if (name == "TO")
            offerFiles("files");
        else if (name == "RUNS" || name == "RUN" || name == "OTHER")
            runsAndColumns();
        else if (name == "COLUMNS")
            assignments();
        else if (name == "PROPERTIES")
            properties(false);
        else if (name == "RULE")
            rules(false);
        else if (name == "WHAT") {
            offer("configuration");
            offer("direction");
        } else if (name == "OLD")
            names(m_after.back() == "direction" ? &core::Run::direction
                                                : &core::Run::configuration);
    }

    void units()
    {
        for (const char* unit : {"l_per_100km", "mpg_us", "mpg_imp", "km_per_l"})
            offer(unit);
    }
    void fuels(const std::string& before)
    {
        for (const char* fuel : {"petrol", "e10", "diesel", "electric"})
            offer(before + fuel);
    }
    void rules(bool other)
    {
        for (const core::Rule rule : core::allRules())
            offer(std::string(core::ruleName(rule)));
        if (other)
            offer("other");
    }

    void properties(bool limitsOnly)
    {
        if (!limitsOnly && m_typed.starts_with("fuel="))
            fuels("fuel=");
        if (!limitsOnly && m_typed.starts_with("baseline="))
            names(&core::Run::configuration, "baseline=");
        for (const std::string_view name : core::propertyNames())
            if (!limitsOnly || core::findLimit(name))
                offer(std::string(name) + "=");
        offer("accessory_timer.");
    }

    /// COLUMN=VALUE
    void assignments()
    {
        names(&core::Run::configuration, "configuration=");
        names(&core::Run::direction, "direction=");
        for (const char* status : {"counted", "discarded"})
            offerValue("status=", status);
        for (const core::Rule rule : core::allRules())
            offerValue("reason=", std::string(core::ruleName(rule)));
        offerValue("reason=", "other");
        for (const storage::ColumnInfo& column : storage::allColumns())
            offer(column.name + "=", m_io.language.say(column.range));
    }
    /// Only once the name is typed.
    void offerValue(const std::string& before, const std::string& value)
    {
        if (m_typed.starts_with(before))
            offer(before + value);
    }

    void runsAndColumns()
    {
        const bool columns =
            m_verb == "edit" && std::ranges::any_of(m_after, [](const auto& word) {
                return !word.empty() && word.find_first_not_of("0123456789,-") == std::string::npos;
            });
        runs();
        if (columns)
            assignments();
    }

    /// HEADER=COLUMN: headers of the sheet that is named, then ours.
    void headers()
    {
        const std::size_t equals = m_typed.find('=');
        if (equals == std::string::npos) {
            for (const std::string& header : headersOfSheet())
                offer(header + "=");
            return;
        }
        for (const storage::ColumnInfo& column : storage::allColumns())
            offer(m_typed.substr(0, equals + 1) + column.name, m_io.language.say(column.range));
    }

    static bool mayLookInto(const std::filesystem::path& file)
    {
        std::error_code problem;
        return std::filesystem::is_regular_file(file, problem) &&
               std::filesystem::file_size(file, problem) <= kLargestLookedInto;
    }

    std::vector<std::string> headersOfSheet() const
    {
        std::vector<std::string> found;
        for (const std::string& word : m_after) {
            if (!mayLookInto(word) || storage::StudyFile::isStudyFile(word))
                continue;
            const auto bytes = storage::readSheetBytes(word);
            const auto preview = bytes ? storage::previewSheet(bytes.value(), word) : bytes.error();
            if (!preview)
                continue;
            for (const storage::PreviewColumn& column : preview.value().columns)
                if (column.column.empty() && !column.header.empty())
                    found.push_back(column.header);
        }
        return found;
    }

    std::optional<storage::StudyFile> studyFile() const
    {
        for (const std::string& word : m_after)
            if (mayLookInto(word) && storage::StudyFile::isStudyFile(word))
                if (auto file = storage::StudyFile::open(word, true))
                    return std::move(file).take();
        return std::nullopt;
    }
    std::vector<core::Run> runsOfStudy() const
    {
        const auto file = studyFile();
        const auto study = file ? file->study() : core::Result<core::Study>(core::Study{});
        return study ? study.value().runs : std::vector<core::Run>();
    }

    void runs()
    {
        for (const core::Run& run : runsOfStudy())
            offer(std::to_string(run.number),
                  fmt::format("{} {}", run.configuration, run.direction));
    }
    void names(std::string core::Run::*member, const std::string& before = {})
    {
        if (m_typed.starts_with(before))
            for (const core::Run& run : runsOfStudy())
                if (!(run.*member).empty())
                    offer(before + run.*member);
    }
    void recordings()
    {
        if (const auto file = studyFile())
            if (const auto all = storage::recordings(*file))
                for (const storage::RecordingInfo& recording : all.value())
                    offer(recording.name);
    }

    Surroundings& m_io;
    const CLI::App& m_spoken;
    std::vector<std::string> m_words; ///< before the one that is being typed
    std::vector<std::string> m_after; ///< of those, what follows the verb
    std::string m_typed, m_verb;
    std::set<std::string> m_said;
};

} // namespace

int complete(const std::vector<std::string>& words, Surroundings& io)
{
    storage::StudyFile::setWaiting([](const core::Message&) { return false; });
    // Which place a word has is known by its English name.
    Surroundings english{io.out, io.err};
    withWholeParser(io, [&](const CLI::App& spoken) {
        withWholeParser(english, [&](const CLI::App& program) {
            Completion(words, io, spoken).answer(program);
        });
    });
    storage::StudyFile::setWaiting({});
    return 0;
}

} // namespace bothways::cli
