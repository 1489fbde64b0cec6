// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/study/study_file.h"
#include "tests/storage/study/random_studies.h"

#include <cstdint>

namespace bothways::tests {

/// One person's actions on a study, without sense or plan. What the study refuses is part of it.
class RandomEdits {
public:
    explicit RandomEdits(std::uint32_t seed) : m_random(seed) {}
    /// Does something (never undo or redo). False when the study refused it.
    bool apply(storage::StudyFile& file);
    RandomStudies& random() { return m_random; }

private:
    core::RunId anyRun(const core::Study& study);
    bool editRun(storage::StudyFile& file, const core::Study& study);
    bool importSheet(storage::StudyFile& file, const core::Study& study);
    bool changeProperties(storage::StudyFile& file, const core::Study& study);

    RandomStudies m_random;
};

} // namespace bothways::tests
