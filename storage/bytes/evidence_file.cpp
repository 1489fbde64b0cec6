// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/evidence_file.h"

#include "core/base/number_text.h"
#include "core/study/property_values.h"
#include "storage/bytes/file_bytes.h"
#include "storage/bytes/sha256.h"

#include <fmt/format.h>

#include <algorithm>

namespace bothways::storage {
namespace {

constexpr std::string_view kSumWord = ", SHA-256 ";
constexpr std::string_view kBytesWord = " bytes";
constexpr std::string_view kAtWord = " @ ";
constexpr std::size_t kSumDigits = 64;

/// What stands in brackets at the end, and where they open.
struct Bracket {
    std::size_t at = 0;
    EvidenceFile file;
};

/// "clip.mp4 @ 83.5 s"
void takeNameAndMoment(std::string_view text, EvidenceFile& file)
{
    const std::size_t at = text.rfind(kAtWord);
    file.name = text;
    if (at == std::string_view::npos || !text.ends_with(" s"))
        return;
    const std::string_view moment = text.substr(at + kAtWord.size());
    if (const auto seconds = core::propertyNumber(moment.substr(0, moment.size() - 2))) {
        file.at_s = *seconds;
        file.name = text.substr(0, at);
    }
}

std::optional<Bracket> bracketOf(std::string_view words)
{
    if (!words.ends_with(']'))
        return std::nullopt;
    const std::size_t sum = words.rfind(kSumWord);
    if (sum == std::string_view::npos || words.size() != sum + kSumWord.size() + kSumDigits + 1)
        return std::nullopt;
    const std::string_view before = words.substr(0, sum);
    const std::size_t comma = before.rfind(", ");
    const std::size_t opens = before.rfind('[', comma);
    if (comma == std::string_view::npos || opens == std::string_view::npos ||
        !before.ends_with(kBytesWord))
        return std::nullopt;
    const auto bytes = core::wholeNumber<std::int64_t>(
        before.substr(comma + 2, before.size() - comma - 2 - kBytesWord.size()));
    if (!bytes || *bytes < 0)
        return std::nullopt;
    Bracket bracket;
    bracket.at = opens;
    bracket.file.bytes = *bytes;
    bracket.file.sha256 = words.substr(sum + kSumWord.size(), kSumDigits);
    takeNameAndMoment(before.substr(opens + 1, comma - opens - 1), bracket.file);
    return bracket;
}

/// A name that may stand in brackets and come back.
bool isNameable(std::string_view name)
{
    return std::none_of(name.begin(), name.end(),
                        [](char c) { return c == '[' || c == ']' || c == '\n' || c == '\r'; });
}

} // namespace

core::Result<EvidenceFile> evidenceFile(const std::string& word,
                                        const std::filesystem::path& folder)
{
    EvidenceFile file;
    std::filesystem::path path = word;
    std::error_code problem;
    if (const std::size_t at = word.rfind('@');
        at != std::string::npos && !std::filesystem::exists(path, problem))
        if (const auto seconds = core::typedNumber(std::string_view(word).substr(at + 1));
            seconds && *seconds >= 0.0) {
            file.at_s = *seconds;
            path = word.substr(0, at);
        }
    if (const core::Outcome ordinary = checkOrdinary(path, "a photo, a clip or another file"_t);
        !ordinary)
        return ordinary.error();
    const auto bytes = std::filesystem::file_size(path, problem);
    auto sum = sha256OfFile(path);
    if (!sum)
        return sum.error();
    const std::filesystem::path whole = std::filesystem::absolute(path, problem).lexically_normal();
    const std::filesystem::path home =
        std::filesystem::absolute(folder.empty() ? "." : folder, problem).lexically_normal();
    const std::filesystem::path relative = whole.lexically_relative(home);
    file.name = relative.empty() || relative.string().starts_with("..") ? whole.string()
                                                                        : relative.string();
    if (!isNameable(file.name))
        return core::Error{core::ErrorCode::badInput,
                           "its name holds a bracket or a line end; expected another name"_t,
                           path.string()};
    file.bytes = static_cast<std::int64_t>(bytes);
    file.sha256 = std::move(sum).take();
    return file;
}

std::string withEvidenceFile(std::string_view words, const EvidenceFile& file)
{
    std::string text(withoutEvidenceFile(words));
    if (!text.empty())
        text += ' ';
    text += '[' + file.name;
    if (file.at_s)
        text += std::string(kAtWord) + core::propertyText(*file.at_s) + " s";
    return text + fmt::format(", {}{}{}{}]", file.bytes, kBytesWord, kSumWord, file.sha256);
}

std::optional<EvidenceFile> evidenceFileIn(std::string_view words)
{
    auto bracket = bracketOf(words);
    if (!bracket)
        return std::nullopt;
    return std::move(bracket->file);
}

std::string_view withoutEvidenceFile(std::string_view words)
{
    if (const auto bracket = bracketOf(words)) {
        words = words.substr(0, bracket->at);
        while (words.ends_with(' '))
            words.remove_suffix(1);
    }
    return words;
}

std::filesystem::path pathOf(const EvidenceFile& file, const std::filesystem::path& folder)
{
    return folder / file.name; // an absolute name stays what it is
}

EvidenceState stateOf(const EvidenceFile& file, const std::filesystem::path& folder)
{
    const std::filesystem::path path = pathOf(file, folder);
    std::error_code problem;
    if (!std::filesystem::is_regular_file(path, problem))
        return EvidenceState::missing;
    const auto sum = sha256OfFile(path);
    return sum && sum.value() == file.sha256 ? EvidenceState::same : EvidenceState::changed;
}

} // namespace bothways::storage
