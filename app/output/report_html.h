// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/several.h"
#include "app/output/analysis_json.h"
#include "app/wording/units.h"
#include "core/effect/answer.h"
#include "core/screening/finding.h"
#include "core/study/study.h"

#include <string>
#include <string_view>
#include <vector>

/// The report: one self-contained HTML page that a stranger can check. No script, nothing fetched,
/// pictures as SVG, made for a phone and for A4 or Letter paper.
namespace bothways::app {

struct ReportInput {
    const core::Study& study;
    const core::Analysis& analysis;
    const core::Screening& screening;
    std::vector<std::string> historyLines; ///< discards, liftings and looks; from a study file
    std::string inputSha256;
    std::string sourceName; ///< file name without its folder
    wording::ShownUnit unit = wording::ShownUnit::lPer100km;
    std::string madeBy = programAndLibraries({}); ///< program and library versions
    /// Beside the verdict: spoiledRunsSentence(), which the caller makes because it knows what was
    /// overruled. Empty: none.
    std::string warning = {};
    Language language = {}; ///< of the page; what is handed in is in it, too
    /// Recordings that were made live: with which rig, and what was lost. From a study file.
    std::vector<std::string> liveRecordings = {};

    /// "Bothways 0.1.0; Boost 1.74.0, Eigen 3.4.0, fmt 9.1.0": of this build.
    /// @param others  further libraries, as "SQLite 3.40.1, zstd 1.5.4"; may be empty
    [[nodiscard]] static std::string programAndLibraries(std::string_view others);
};

/// By which a page is known for a report of ours: it may be written over.
inline constexpr std::string_view kReportMark =
    "<meta name=\"generator\" content=\"Bothways report\"/>";

/// What several studies say together.
struct SeveralInput {
    Several together;
    std::vector<std::string> checksums; ///< of what was analysed, a study each
    wording::ShownUnit unit = wording::ShownUnit::lPer100km;
    /// What a reader has to know about single ones: runs that count twice, or although spoiled.
    std::vector<std::string> remarks = {};
    std::string madeBy = ReportInput::programAndLibraries({});
    Language language = {};
};
[[nodiscard]] std::string reportOfSeveralHtml(const SeveralInput& input);

/// The same input gives the same bytes: no clock, no locale, nothing unordered is read.
/// Positions are not among the input and so cannot enter.
///
/// The page is HTML and well-formed XML at once.
[[nodiscard]] std::string reportHtml(const ReportInput& input);

} // namespace bothways::app
