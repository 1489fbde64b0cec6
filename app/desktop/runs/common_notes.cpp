// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/common_notes.h"

#include <algorithm>
#include <utility>

namespace bothways::app {
namespace {

struct CommonNoteWords {
    Q_DECLARE_TR_FUNCTIONS(CommonNotes)
};

using Said = std::map<std::string, QString>;

/// Where a label speaks of something that may be alike in all runs: of what.
Said subjectsOf(const RunTags& tags)
{
    Said said;
    for (const RunTag& tag : tags)
        if (!tag.subject.empty())
            said[tag.subject] = tag.text;
    return said;
}

} // namespace

CommonNotes::CommonNotes(const core::Study& study, const UnitsShown& units)
    : m_timed(study.properties.timed_accessories), m_units(units)
{
    constexpr std::size_t kFewest = 3;
    if (study.runs.size() < kFewest)
        return;
    std::map<std::string, std::map<QString, std::size_t>> counts;
    for (const core::Run& run : study.runs)
        for (const auto& [subject, text] : subjectsOf(app::tagsOf(run, units, m_timed)))
            ++counts[subject][text];
    for (const auto& [subject, texts] : counts) {
        const auto most =
            std::ranges::max_element(texts, {}, [](const auto& entry) { return entry.second; });
        if (2 * most->second <= study.runs.size())
            continue;
        m_common[subject] = most->first;
        m_everywhere = m_everywhere && most->second == study.runs.size();
    }
}

QString CommonNotes::words() const
{
    QStringList parts;
    for (const auto& [subject, text] : m_common)
        parts += text;
    if (parts.isEmpty())
        return {};
    const QString list = parts.join(CommonNoteWords::tr(", ", "between notes"));
    return m_everywhere ? CommonNoteWords::tr("In every run: %1.").arg(list)
                        : CommonNoteWords::tr("In every run that says nothing else: %1.").arg(list);
}

RunTags CommonNotes::tagsOf(const core::Run& run) const
{
    RunTags all = app::tagsOf(run, m_units, m_timed);
    const Said said = subjectsOf(all);
    std::erase_if(all, [&](const RunTag& tag) {
        const auto common = m_common.find(tag.subject);
        return common != m_common.end() && common->second == tag.text;
    });
    for (const auto& [subject, text] : m_common)
        if (!said.contains(subject)) {
            const QString words = CommonNoteWords::tr("not noted: %1").arg(text);
            all.insert(all.begin(), {RunTag::Kind::accessory, words, words, subject, false});
        }
    // What may have moved the run first, what is as it always is last.
    std::ranges::stable_sort(all, std::ranges::greater(), &RunTag::loud);
    return all;
}

} // namespace bothways::app
