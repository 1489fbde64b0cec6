// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/catalogue/catalogue.h"

#include <expat.h>
#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <memory>
#include <stdexcept>

namespace bothways::app::catalogue {
namespace {

std::string contentOf(const std::filesystem::path& file)
{
    std::ifstream stream(file, std::ios::binary);
    if (!stream)
        throw std::runtime_error(file.string() + ": cannot be read");
    return {std::istreambuf_iterator<char>(stream), {}};
}

void appendUtf8(std::string& text, unsigned code)
{
    const auto byte = [&text](unsigned value) { text += static_cast<char>(value); };
    if (code < 0x80) {
        byte(code);
    } else if (code < 0x800) {
        byte(0xC0U | (code >> 6U));
        byte(0x80U | (code & 0x3FU));
    } else {
        byte(0xE0U | (code >> 12U));
        byte(0x80U | ((code >> 6U) & 0x3FU));
        byte(0x80U | (code & 0x3FU));
    }
}

/// Reads C++ as far as literals go.
class Scanner {
public:
    explicit Scanner(std::string_view source) : m_source(source) {}

    std::vector<std::string> texts()
    {
        while (m_at < m_source.size())
            step();
        return std::move(m_texts);
    }

private:
    [[nodiscard]] char ahead(std::size_t by = 0) const
    {
        return m_at + by < m_source.size() ? m_source[m_at + by] : '\0';
    }

    void step()
    {
        if (m_source.substr(m_at, 2) == "//") {
            m_at = std::min(m_source.find('\n', m_at), m_source.size());
        } else if (m_source.substr(m_at, 2) == "/*") {
            const std::size_t end = m_source.find("*/", m_at + 2);
            m_at = end == std::string_view::npos ? m_source.size() : end + 2;
        } else if (ahead() == '\'') {
            const bool digits =
                m_at > 0 && std::isalnum(static_cast<unsigned char>(m_source[m_at - 1]));
            ++m_at; // 1'000: no character
            if (!digits)
                skipTo('\'');
            m_run.reset();
        } else if (m_source.substr(m_at, 2) == "R\"") {
            const std::size_t open = std::min(m_source.find('(', m_at), m_source.size());
            const std::string end =
                ")" + std::string(m_source.substr(m_at + 2, open - m_at - 2)) + "\"";
            m_at = std::min(m_source.find(end, open), m_source.size());
            m_at = std::min(m_at + end.size(), m_source.size());
            m_run.reset();
        } else if (ahead() == '"') {
            literal();
        } else {
            if (!std::isspace(static_cast<unsigned char>(ahead())))
                m_run.reset(); // what follows is another literal
            ++m_at;
        }
    }

    void skipTo(char quote)
    {
        while (m_at < m_source.size() && ahead() != quote)
            m_at += ahead() == '\\' ? 2U : 1U;
        m_at = std::min(m_at + 1, m_source.size());
    }

    void literal()
    {
        ++m_at;
        if (!m_run)
            m_run = std::make_unique<std::string>();
        while (m_at < m_source.size() && ahead() != '"') {
            if (ahead() == '\\')
                escape();
            else
                *m_run += m_source[m_at++];
        }
        m_at = std::min(m_at + 1, m_source.size());
        if (m_source.substr(m_at, 2) == "_t" &&
            !(std::isalnum(static_cast<unsigned char>(ahead(2))) || ahead(2) == '_')) {
            if (!m_run->empty()) // operator""_t itself
                m_texts.push_back(std::move(*m_run));
            m_run.reset();
            m_at += 2;
        }
    }

    void escape()
    {
        const char c = ahead(1);
        m_at += 2;
        if (c == 'u') {
            const std::string digits(m_source.substr(m_at, 4));
            appendUtf8(*m_run, static_cast<unsigned>(std::stoul(digits, nullptr, 16)));
            m_at += 4;
        } else {
            *m_run += c == 'n' ? '\n' : c == 't' ? '\t' : c;
        }
    }

    std::string_view m_source;
    std::size_t m_at = 0;
    std::unique_ptr<std::string> m_run; ///< the literals that stand together so far
    std::vector<std::string> m_texts;
};

/// What the parser tells about a .ts file, as it goes.
struct TsReading {
    Translations translations;
    std::string source, comment, translation;
    std::string* into = nullptr;
    std::string twice;
};

void begin(void* data, const char* name, const char** /*attributes*/)
{
    auto& reading = *static_cast<TsReading*>(data);
    const std::string_view element = name;
    if (element == "message")
        reading.source = reading.comment = reading.translation = {};
    reading.into = element == "source"        ? &reading.source
                   : element == "comment"     ? &reading.comment
                   : element == "translation" ? &reading.translation
                                              : nullptr;
}

void end(void* data, const char* name)
{
    auto& reading = *static_cast<TsReading*>(data);
    reading.into = nullptr;
    if (std::string_view(name) != "message")
        return;
    const std::string key =
        reading.comment.empty() ? reading.source : reading.source + "##" + reading.comment;
    if (!reading.translations.emplace(key, reading.translation).second)
        reading.twice = key;
}

void letters(void* data, const char* text, int length)
{
    auto& reading = *static_cast<TsReading*>(data);
    if (reading.into != nullptr)
        reading.into->append(text, static_cast<std::size_t>(length));
}

std::string escapedXml(std::string_view text)
{
    std::string safe;
    for (const char c : text) {
        switch (c) {
        case '&': safe += "&amp;"; break;
        case '<': safe += "&lt;"; break;
        case '>': safe += "&gt;"; break;
        case '"': safe += "&quot;"; break;
        case '\'': safe += "&apos;"; break;
        default: safe += c;
        }
    }
    return safe;
}

std::string quotedCpp(std::string_view text)
{
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '\n')
            quoted += "\\n";
        else if (c == '"' || c == '\\')
            quoted += {'\\', c};
        else
            quoted += c;
    }
    return quoted + '"';
}

/// "{}" in order are {0}, {1}, ...; in ascending order.
std::vector<int> placesOf(std::string_view text)
{
    std::vector<int> places;
    int next = 0;
    for (std::size_t i = 0; i + 1 < text.size(); ++i) {
        if ((text[i] == '{' || text[i] == '}') && text[i + 1] == text[i])
            ++i;
        else if (text[i] == '{')
            places.push_back(text[i + 1] == '}' ? next++ : text[i + 1] - '0');
    }
    std::sort(places.begin(), places.end());
    return places;
}

} // namespace

std::vector<std::string> textsIn(std::string_view source)
{
    return Scanner(source).texts();
}

std::set<std::string> textsBelow(const std::vector<std::filesystem::path>& folders)
{
    std::set<std::string> keys;
    for (const std::filesystem::path& folder : folders)
        for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
            if (entry.path().extension() == ".h" || entry.path().extension() == ".cpp")
                for (std::string& text : textsIn(contentOf(entry.path())))
                    keys.insert(std::move(text));
    return keys;
}

Translations readTs(const std::filesystem::path& file)
{
    const std::string content = contentOf(file);
    TsReading reading;
    const std::unique_ptr<XML_ParserStruct, void (*)(XML_Parser)> parser(XML_ParserCreate("UTF-8"),
                                                                         XML_ParserFree);
    XML_SetUserData(parser.get(), &reading);
    XML_SetElementHandler(parser.get(), begin, end);
    XML_SetCharacterDataHandler(parser.get(), letters);
    if (XML_Parse(parser.get(), content.data(), static_cast<int>(content.size()), XML_TRUE) !=
        XML_STATUS_OK)
        throw std::runtime_error(fmt::format("{}:{}: {}", file.string(),
                                             XML_GetCurrentLineNumber(parser.get()),
                                             XML_ErrorString(XML_GetErrorCode(parser.get()))));
    if (!reading.twice.empty())
        throw std::runtime_error(
            fmt::format("{}: is there twice: {}", file.string(), reading.twice));
    return std::move(reading.translations);
}

std::string writeTs(const Translations& translations, std::string_view language)
{
    std::string text = fmt::format("<?xml version=\"1.0\" encoding=\"utf-8\"?>\n<!DOCTYPE TS>\n"
                                   "<TS version=\"2.1\" language=\"{}\" sourcelanguage=\"en\">\n"
                                   "<context>\n    <name>Sentences</name>\n",
                                   language);
    for (const auto& [key, translation] : translations) {
        const std::size_t hashes = key.find("##");
        text += fmt::format("    <message>\n        <source>{}</source>\n",
                            escapedXml(std::string_view(key).substr(0, hashes)));
        if (hashes != std::string::npos)
            text += fmt::format("        <comment>{}</comment>\n",
                                escapedXml(std::string_view(key).substr(hashes + 2)));
        text += translation.empty()
                    ? "        <translation type=\"unfinished\"></translation>\n    </message>\n"
                    : fmt::format("        <translation>{}</translation>\n    </message>\n",
                                  escapedXml(translation));
    }
    return text + "</context>\n</TS>\n";
}

Translations updated(const Translations& known, const std::set<std::string>& keys)
{
    Translations result;
    for (const std::string& key : keys) {
        const auto found = known.find(key);
        result.emplace(key, found == known.end() ? std::string() : found->second);
    }
    return result;
}

std::string tableSource(const Translations& translations, std::string_view name)
{
    // Ascending as strcmp() has it: by unsigned bytes, which is std::string's order, too.
    std::string text =
        fmt::format("constexpr std::pair<const char*, const char*> {}[] = {{\n", name);
    for (const auto& [key, translation] : translations)
        if (!translation.empty())
            text += fmt::format("    {{{}, {}}},\n", quotedCpp(key), quotedCpp(translation));
    return text + "};\n";
}

std::string faultOf(const std::string& key, const std::string& translation)
{
    const std::vector<int> wanted = placesOf(key.substr(0, key.find("##")));
    if (placesOf(translation) == wanted)
        return {};
    return fmt::format("'{}' has {} places, its translation '{}' not the same ones; write {{0}}, "
                       "{{1}} where the order differs",
                       key, wanted.size(), translation);
}

} // namespace bothways::app::catalogue
