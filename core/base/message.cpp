// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/message.h"

#include <fmt/format.h>

#include <cerrno>
#include <system_error>

namespace bothways::core {
namespace {

std::string inEnglish(const Value& value)
{
    return std::visit(
        [](const auto& kind) -> std::string {
            using Kind = std::remove_cvref_t<decltype(kind)>;
            if constexpr (std::is_same_v<Kind, std::string>)
                return kind;
            else if constexpr (std::is_same_v<Kind, long long>)
                return std::to_string(kind);
            else if constexpr (std::is_same_v<Kind, double>)
                return fmt::format("{:.9g}", kind);
            else if constexpr (std::is_same_v<Kind, Text<0>>)
                return Message(kind).english();
            else
                return kind->english();
        },
        value.get());
}

} // namespace

Value::Value(Message message) : m_value(std::make_shared<const Message>(std::move(message))) {}

Message Message::verbatim(std::string words)
{
    return message("{}"_t, std::move(words));
}

std::string_view shownPart(std::string_view key)
{
    return key.substr(0, key.find("##"));
}

std::string filled(std::string_view text, const std::vector<std::string>& values)
{
    std::string whole;
    whole.reserve(text.size() + 16 * values.size());
    std::size_t next = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const char after = i + 1 < text.size() ? text[i + 1] : '\0';
        if ((c == '{' || c == '}') && after == c) {
            whole += c;
            ++i;
            continue;
        }
        std::size_t at = values.size();
        std::size_t length = 0;
        if (c == '{' && after == '}') {
            at = next++;
            length = 2;
        } else if (c == '{' && after >= '0' && after <= '9' && i + 2 < text.size() &&
                   text[i + 2] == '}') {
            at = static_cast<std::size_t>(after - '0');
            length = 3;
        }
        if (at < values.size()) {
            whole += values[at];
            i += length - 1;
        } else {
            whole += c;
        }
    }
    return whole;
}

std::string Message::english() const
{
    std::vector<std::string> said;
    for (const Value& value : values)
        said.push_back(inEnglish(value));
    return filled(shownPart(key), said);
}

Message systemProblem(int number)
{
    switch (number) {
    case ENOENT: return "No such file or directory"_t;
    case EACCES: return "Permission denied"_t;
    case ENOSPC: return "No space left on device"_t;
    case EROFS: return "Read-only file system"_t;
    case EIO: return "Input/output error"_t;
    case EISDIR: return "Is a directory"_t;
    case EFBIG: return "File too large"_t;
    case EDQUOT: return "Disk quota exceeded"_t;
    case EPIPE: return "Broken pipe"_t;
    case ENAMETOOLONG: return "File name too long"_t;
    case ENOTDIR: return "Not a directory"_t;
    default: return Message::verbatim(std::generic_category().message(number));
    }
}

} // namespace bothways::core
