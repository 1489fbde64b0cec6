// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/xml_pull.h"

#include <charconv>

namespace bothways::storage {
namespace {

constexpr std::size_t kBufferSize = std::size_t{1} << 16;
constexpr std::size_t kMaxName = 256;
constexpr std::size_t kMaxValue = std::size_t{1} << 14;
constexpr std::size_t kMaxAttributes = 64;
constexpr std::size_t kMaxDepth = 64;
constexpr std::size_t kTextPiece = 4096;

bool isBlank(int c)
{
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

bool isNameCharacter(int c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' ||
           c == '-' || c == '.' || c == ':' || c >= 0x80;
}

/// A code point as UTF-8; nothing for what XML does not allow.
bool appendCodePoint(std::string& text, std::uint32_t code)
{
    const bool allowed = code == 0x9 || code == 0xA || code == 0xD ||
                         (code >= 0x20 && code <= 0xD7FF) || (code >= 0xE000 && code <= 0xFFFD) ||
                         (code >= 0x10000 && code <= 0x10FFFF);
    if (!allowed)
        return false;
    const auto byte = [&text](std::uint32_t value) { text += static_cast<char>(value); };
    if (code < 0x80) {
        byte(code);
    } else if (code < 0x800) {
        byte(0xC0 | code >> 6);
        byte(0x80 | (code & 0x3F));
    } else if (code < 0x10000) {
        byte(0xE0 | code >> 12);
        byte(0x80 | (code >> 6 & 0x3F));
        byte(0x80 | (code & 0x3F));
    } else {
        byte(0xF0 | code >> 18);
        byte(0x80 | (code >> 12 & 0x3F));
        byte(0x80 | (code >> 6 & 0x3F));
        byte(0x80 | (code & 0x3F));
    }
    return true;
}

std::string withoutPrefix(const std::string& name)
{
    const std::size_t colon = name.rfind(':');
    return colon == std::string::npos ? name : name.substr(colon + 1);
}

} // namespace

XmlPull::XmlPull(Read read) : m_read(std::move(read)), m_buffer(kBufferSize) {}

int XmlPull::peek()
{
    if (m_at == m_size && !m_sourceEnded) {
        m_at = 0;
        m_size = m_read(m_buffer.data(), m_buffer.size());
        m_sourceEnded = m_size == 0;
    }
    return m_at < m_size ? static_cast<unsigned char>(m_buffer[m_at]) : -1;
}

int XmlPull::get()
{
    const int c = peek();
    if (c >= 0)
        ++m_at;
    m_line += c == '\n';
    return c;
}

bool XmlPull::takeText(std::string_view text)
{
    for (const char c : text)
        if (get() != static_cast<unsigned char>(c))
            return false;
    return true;
}

/// Goes on until `end` was read.
bool XmlPull::skipPast(std::string_view end)
{
    std::string last;
    for (int c = get(); c >= 0; c = get()) {
        last += static_cast<char>(c);
        if (last.size() > end.size())
            last.erase(0, 1);
        if (last == end)
            return true;
    }
    return false;
}

void XmlPull::skipBlanks()
{
    while (isBlank(peek()))
        get();
}

XmlPull::Event XmlPull::broken(core::Message fault)
{
    m_fault = std::move(fault);
    m_final = Event::broken;
    return Event::broken;
}

XmlPull::Event XmlPull::next()
{
    if (m_final)
        return *m_final;
    if (m_closeNext) {
        m_closeNext = false;
        m_open.pop_back();
        return Event::end;
    }
    if (m_line == 1 && m_at == 0 && m_size == 0 && peek() == 0xEF && !takeText("\xEF\xBB\xBF"))
        return broken("a byte that is no text"_t);
    for (;;) {
        const int c = peek();
        if (c < 0) {
            if (!m_open.empty())
                return broken(core::message("the file ends within <{}>"_t, m_open.back()));
            if (!m_rootSeen)
                return broken("no element"_t);
            m_final = Event::finished;
            return *m_final;
        }
        if (c != '<') {
            const Event event = readText();
            if (event == Event::text && m_open.empty()) {
                if (m_text.find_first_not_of(" \t\r\n") != std::string::npos)
                    return broken("text outside of the elements"_t);
                continue;
            }
            return event;
        }
        get();
        const auto passed = Event::finished; // says: nothing of interest, go on
        const Event event = readMarkup();
        if (event != passed)
            return event;
    }
}

XmlPull::Event XmlPull::readText()
{
    m_text.clear();
    while (peek() >= 0 && peek() != '<' && m_text.size() < kTextPiece) {
        const int c = get();
        if (c == '&') {
            if (!readReference(m_text))
                return broken("a reference that is none, like '&amp;'"_t);
        } else {
            m_text += static_cast<char>(c);
        }
    }
    return Event::text;
}

/// After '<'. @return finished: passed over
XmlPull::Event XmlPull::readMarkup()
{
    switch (peek()) {
    case '?': return skipPast("?>") ? Event::finished : broken("an instruction that never ends"_t);
    case '!': get(); return readDeclaration();
    case '/': get(); return readEnd();
    default: return readStart();
    }
}

XmlPull::Event XmlPull::readDeclaration()
{
    if (peek() == '-') {
        if (!takeText("--") || !skipPast("-->"))
            return broken("a comment that never ends"_t);
        return Event::finished;
    }
    if (peek() == '[')
        return readCdata();
    // A document type: may hold declarations in brackets, and quoted texts.
    int brackets = 0;
    for (int c = get(); c >= 0; c = get()) {
        if (c == '"' || c == '\'') {
            if (!skipPast(std::string(1, static_cast<char>(c))))
                break;
        } else if (c == '[') {
            ++brackets;
        } else if (c == ']') {
            --brackets;
        } else if (c == '>' && brackets <= 0) {
            return Event::finished;
        }
    }
    return broken("a declaration that never ends"_t);
}

XmlPull::Event XmlPull::readCdata()
{
    if (!takeText("[CDATA[") || m_open.empty())
        return broken("a section that is no CDATA"_t);
    m_text.clear();
    for (int c = get(); c >= 0; c = get()) {
        m_text += static_cast<char>(c);
        if (m_text.ends_with("]]>")) {
            m_text.erase(m_text.size() - 3);
            return Event::text;
        }
        if (m_text.size() > kMaxValue)
            return broken("a CDATA section that is too long"_t);
    }
    return broken("a CDATA section that never ends"_t);
}

bool XmlPull::readName(std::string& name)
{
    name.clear();
    while (isNameCharacter(peek()) && name.size() <= kMaxName)
        name += static_cast<char>(get());
    return !name.empty() && name.size() <= kMaxName;
}

XmlPull::Event XmlPull::readEnd()
{
    std::string name;
    if (!readName(name))
        return broken("an end tag without a name"_t);
    skipBlanks();
    if (get() != '>')
        return broken(core::message("'</{}' without its '>'"_t, name));
    if (m_open.empty())
        return broken(core::message("</{}> where no end tag was expected"_t, name));
    if (m_open.back() != name)
        return broken(core::message("</{}> where </{}> was expected"_t, name, m_open.back()));
    m_open.pop_back();
    m_name = withoutPrefix(name);
    return Event::end;
}

XmlPull::Event XmlPull::readStart()
{
    std::string name;
    if (!readName(name))
        return broken("a '<' without a name"_t);
    if (m_open.empty() && m_rootSeen)
        return broken("a second root element"_t);
    if (m_open.size() >= kMaxDepth)
        return broken("elements nested too deep"_t);
    m_attributes.clear();
    for (;;) {
        skipBlanks();
        const int c = peek();
        if (c == '>' || c == '/')
            break;
        if (!readAttribute())
            return broken(core::message("an attribute of <{}> that cannot be read"_t, name));
    }
    const bool empty = get() == '/';
    if (empty && get() != '>')
        return broken(core::message("'<{}/' without its '>'"_t, name));
    m_rootSeen = true;
    m_closeNext = empty;
    m_name = withoutPrefix(name);
    m_open.push_back(std::move(name));
    return Event::start;
}

bool XmlPull::readAttribute()
{
    std::string name, value;
    if (m_attributes.size() >= kMaxAttributes || !readName(name))
        return false;
    skipBlanks();
    if (get() != '=')
        return false;
    skipBlanks();
    const int quote = get();
    if (quote != '"' && quote != '\'')
        return false;
    for (int c = get(); c != quote; c = get()) {
        if (c < 0 || c == '<' || value.size() > kMaxValue)
            return false;
        if (c == '&') {
            if (!readReference(value))
                return false;
        } else {
            value += static_cast<char>(c);
        }
    }
    m_attributes.emplace_back(withoutPrefix(name), std::move(value));
    return true;
}

/// After '&'. Entities of a document type stay as they are written.
bool XmlPull::readReference(std::string& into)
{
    std::string name;
    for (int c = get(); c != ';'; c = get()) {
        if (c < 0 || name.size() > 32 || c == '<' || c == '&' || isBlank(c))
            return false;
        name += static_cast<char>(c);
    }
    if (name.starts_with('#')) {
        const bool hexadecimal = name.size() > 1 && name[1] == 'x';
        const char* const first = name.data() + (hexadecimal ? 2 : 1);
        const char* const last = name.data() + name.size();
        std::uint32_t code = 0;
        const auto [end, problem] = std::from_chars(first, last, code, hexadecimal ? 16 : 10);
        return problem == std::errc() && end == last && appendCodePoint(into, code);
    }
    constexpr std::pair<std::string_view, char> kKnown[] = {
        {"amp", '&'}, {"lt", '<'}, {"gt", '>'}, {"quot", '"'}, {"apos", '\''}};
    for (const auto& [known, character] : kKnown)
        if (name == known) {
            into += character;
            return true;
        }
    into += '&' + name + ';';
    return !name.empty();
}

std::optional<std::string_view> XmlPull::attribute(std::string_view name) const
{
    for (const auto& [known, value] : m_attributes)
        if (known == name)
            return value;
    return std::nullopt;
}

} // namespace bothways::storage
