// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/history_detail.h"

#include "core/base/number_text.h"

#include <fmt/format.h>

#include <charconv>

namespace bothways::storage {
namespace {

constexpr std::string_view kVersion = "/1";
constexpr int kDeepest = 4;

void write(std::string& out, std::string_view text)
{
    out += '"';
    for (const char c : text) {
        if (c == '"' || c == '\\')
            (out += '\\') += c;
        else if (static_cast<unsigned char>(c) < 0x20U)
            out += fmt::format("\\u{:04x}", static_cast<unsigned char>(c));
        else
            out += c;
    }
    out += '"';
}

void write(std::string& out, const HistoryValue& value);

void write(std::string& out, const HistoryValue::List& list)
{
    out += '[';
    for (std::size_t i = 0; i < list.size(); ++i) {
        out += i == 0 ? "" : ",";
        write(out, list[i]);
    }
    out += ']';
}

void write(std::string& out, const HistoryValue& value)
{
    if (value.isList())
        write(out, value.list());
    else if (const auto* number = std::get_if<long long>(&value.get()))
        out += std::to_string(*number);
    else
        write(out, std::string_view(value.text()));
}

/// Reads what write() writes, and no more of JSON than that.
class Reader {
public:
    explicit Reader(std::string_view text) : m_rest(text) {}

    std::optional<HistoryValue::List> list(int depth = 0)
    {
        HistoryValue::List values;
        if (depth > kDeepest || !take('['))
            return std::nullopt;
        if (take(']'))
            return values;
        do {
            auto one = value(depth);
            if (!one)
                return std::nullopt;
            values.push_back(std::move(*one));
        } while (take(','));
        if (!take(']'))
            return std::nullopt;
        return values;
    }
    [[nodiscard]] bool atEnd() const { return m_rest.empty(); }

private:
    std::optional<HistoryValue> value(int depth)
    {
        if (m_rest.starts_with('['))
            return list(depth + 1);
        if (m_rest.starts_with('"'))
            return text();
        long long number = 0;
        const auto [end, problem] =
            std::from_chars(m_rest.data(), m_rest.data() + m_rest.size(), number);
        if (problem != std::errc())
            return std::nullopt;
        m_rest.remove_prefix(static_cast<std::size_t>(end - m_rest.data()));
        return number;
    }

    std::optional<HistoryValue> text()
    {
        std::string words;
        take('"');
        while (!m_rest.empty() && m_rest.front() != '"') {
            if (m_rest.front() != '\\') {
                words += m_rest.front();
                m_rest.remove_prefix(1);
            } else if (const auto c = escaped()) {
                words += *c;
            } else {
                return std::nullopt;
            }
        }
        if (!take('"'))
            return std::nullopt;
        return words;
    }

    std::optional<char> escaped()
    {
        take('\\');
        if (m_rest.starts_with('"') || m_rest.starts_with('\\')) {
            const char c = m_rest.front();
            m_rest.remove_prefix(1);
            return c;
        }
        constexpr std::size_t kLength = 5; // u001f
        if (m_rest.size() < kLength || m_rest.front() != 'u')
            return std::nullopt;
        const auto code = core::wholeNumber<unsigned>(m_rest.substr(1, kLength - 1), 16);
        if (!code || *code >= 0x20U)
            return std::nullopt;
        m_rest.remove_prefix(kLength);
        return static_cast<char>(*code);
    }

    bool take(char c)
    {
        if (!m_rest.starts_with(c))
            return false;
        m_rest.remove_prefix(1);
        return true;
    }

    std::string_view m_rest;
};

} // namespace

const std::string& HistoryValue::text() const
{
    static const std::string none;
    const auto* text = std::get_if<std::string>(&m_value);
    return text ? *text : none;
}

long long HistoryValue::number() const
{
    const auto* number = std::get_if<long long>(&m_value);
    return number ? *number : 0;
}

const HistoryValue::List& HistoryValue::list() const
{
    static const List none;
    const auto* list = std::get_if<List>(&m_value);
    return list ? *list : none;
}

std::string HistoryDetail::written() const
{
    if (form.empty())
        return {};
    std::string text(kVersion);
    HistoryValue::List whole = {form};
    whole.insert(whole.end(), values.begin(), values.end());
    write(text, whole);
    return text;
}

std::optional<HistoryDetail> HistoryDetail::read(std::string_view text)
{
    if (!text.starts_with(kVersion))
        return std::nullopt;
    Reader reader(text.substr(kVersion.size()));
    auto whole = reader.list();
    if (!whole || whole->empty() || !reader.atEnd() || whole->front().text().empty())
        return std::nullopt;
    HistoryDetail detail{whole->front().text(), {}};
    whole->erase(whole->begin());
    detail.values = std::move(*whole);
    return detail;
}

} // namespace bothways::storage
