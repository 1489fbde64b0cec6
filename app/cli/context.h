// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/base/result.h"

#include <functional>
#include <optional>
#include <ostream>
#include <stop_token>
#include <string>

/// What every verb is handed: where to write, what day it is. No globals, no clock inside.
namespace bothways::cli {

using app::Language;
using core::Done;
using core::Error;
using core::ErrorCode;
using core::Outcome;
using core::Result;

struct Surroundings {
    std::ostream& out; ///< results
    std::ostream& err; ///< errors, progress
    bool outIsTerminal = false;
    bool errIsTerminal = false;
    bool colour = false;              ///< `out` is a terminal that may be coloured
    std::string today = {};           ///< YYYY-MM-DD, for sheets with times of day
    Language language = {};           ///< that people are spoken to in; JSON and CSV are English
    bool quiet = false;               ///< what was done is not said
    std::stop_token stop = {};        ///< Ctrl-C and the like: long work ends, with nothing changed
    std::function<void()> begin = {}; ///< called before a verb works; may be empty

    /// For what was done, which nobody asked to be told: "added run 12".
    [[nodiscard]] std::ostream& told() { return told(out); }
    [[nodiscard]] std::ostream& told(std::ostream& where) const
    {
        static std::ostream nowhere(nullptr);
        return quiet ? nowhere : where;
    }
};

/// What a verb came to; empty until one has run.
using VerbResult = std::optional<Outcome>;

struct Context {
    Surroundings& io;
    VerbResult result = {};
};

/// An Error of wrong use.
[[nodiscard]] Error wrongUse(core::Message message, core::Place where = {});

} // namespace bothways::cli
