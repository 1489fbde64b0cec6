// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/study/random_edits.h"

#include "core/study/properties.h"
#include "tests/storage/study/study_builders.h"

namespace bothways::tests {

core::RunId RandomEdits::anyRun(const core::Study& study)
{
    if (study.runs.empty())
        return {};
    return study.runs[static_cast<std::size_t>(m_random.below(static_cast<int>(study.runs.size())))]
        .id;
}

bool RandomEdits::editRun(storage::StudyFile& file, const core::Study& study)
{
    core::Run run = m_random.run(study);
    run.id = anyRun(study);
    return static_cast<bool>(file.updateRun(run));
}

bool RandomEdits::importSheet(storage::StudyFile& file, const core::Study& study)
{
    core::Study sheet;
    for (int i = m_random.below(5); i >= 0; --i)
        sheet.runs.push_back(m_random.run(study));
    core::sortByStart(sheet);
    return static_cast<bool>(file.importRuns(sheet, "sheet.csv"));
}

bool RandomEdits::changeProperties(storage::StudyFile& file, const core::Study& study)
{
    core::StudyProperties properties = study.properties;
    switch (m_random.below(5)) {
    case 0: properties.name = m_random.nastyText(); break;
    case 1: properties.margin_pct = m_random.number(0.1, 5.0); break;
    case 2: properties.limits["overspeed.rpm"] = m_random.number(1000, 5000); break;
    case 3: properties.notes = m_random.nastyText(); break;
    default: properties.plan = core::PlannedStudy{"ABA", 1 + m_random.below(8), 1.0, 0.95}; break;
    }
    return static_cast<bool>(file.setProperties(properties, {}));
}

bool RandomEdits::apply(storage::StudyFile& file)
{
    const core::Study study = taken(file.study());
    switch (m_random.below(12)) {
    case 0:
    case 1: return static_cast<bool>(file.addRun(m_random.run(study)));
    case 2: return importSheet(file, study);
    case 3: return editRun(file, study);
    case 4: return static_cast<bool>(file.removeRuns({anyRun(study)}));
    case 5:
        return static_cast<bool>(
            file.discard({anyRun(study), anyRun(study)}, {"adjusted", m_random.nastyText()}));
    case 6: return static_cast<bool>(file.discard({anyRun(study)}, {"other", "a bee"}));
    case 7: return static_cast<bool>(file.count({anyRun(study)}));
    case 8: return static_cast<bool>(file.pair(anyRun(study), anyRun(study)));
    case 9: return static_cast<bool>(file.unpair(anyRun(study)));
    case 10:
        return static_cast<bool>(file.overrule({study.runs.empty() ? 1 : study.runs.front().number,
                                                "overspeed", "counter" + m_random.nastyText()}));
    default: return changeProperties(file, study);
    }
}

} // namespace bothways::tests
