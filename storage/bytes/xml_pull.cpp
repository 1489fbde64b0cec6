// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/xml_pull.h"

#include <expat.h>

#include <new>

namespace bothways::storage {
namespace {

constexpr int kBufferSize = 1 << 16;
constexpr std::size_t kMaxName = 256;
constexpr std::size_t kMaxValue = std::size_t{1} << 14;
constexpr std::size_t kMaxAttributes = 64;
constexpr std::size_t kMaxDepth = 64;
constexpr std::size_t kTextPiece = 4096;
/// Of a tag, a comment, a declaration: expat holds them whole.
constexpr std::int64_t kMaxTag = std::int64_t{1} << 20;

std::string withoutPrefix(const char* name)
{
    const std::string_view whole(name);
    const std::size_t colon = whole.rfind(':');
    return std::string(colon == std::string_view::npos ? whole : whole.substr(colon + 1));
}

} // namespace

/// What expat calls; each is handed the XmlPull.
struct XmlHandlers {
    static void start(void* user, const XML_Char* name, const XML_Char** attributes)
    {
        XmlPull& pull = *static_cast<XmlPull*>(user);
        if (pull.m_ended)
            return;
        if (pull.m_open.size() >= kMaxDepth)
            return pull.refuse("elements nested too deep"_t);
        if (std::string_view(name).size() > kMaxName)
            return pull.refuse("a name that is too long"_t);
        pull.m_open.emplace_back(name);
        pull.give(XmlPull::Event::start, withoutPrefix(name));
        for (; *attributes; attributes += 2) {
            XmlPull::Item& item = pull.m_ready.back();
            const std::string_view value(attributes[1]);
            if (item.attributes.size() >= kMaxAttributes || value.size() > kMaxValue ||
                std::string_view(attributes[0]).size() > kMaxName)
                return pull.refuse(
                    core::message("an attribute of <{}> that cannot be read"_t, name));
            item.attributes.emplace_back(withoutPrefix(attributes[0]), value);
        }
    }

    static void end(void* user, const XML_Char* name)
    {
        XmlPull& pull = *static_cast<XmlPull*>(user);
        if (pull.m_ended)
            return;
        pull.m_open.pop_back();
        pull.give(XmlPull::Event::end, withoutPrefix(name));
    }

    static void text(void* user, const XML_Char* text, int size)
    {
        XmlPull& pull = *static_cast<XmlPull*>(user);
        if (pull.m_ended)
            return;
        const std::string_view piece(text, static_cast<std::size_t>(size));
        const bool goesOn = !pull.m_newText && !pull.m_ready.empty() &&
                            pull.m_ready.back().event == XmlPull::Event::text &&
                            pull.m_ready.back().text.size() < kTextPiece;
        if (goesOn)
            pull.m_ready.back().text += piece;
        else
            pull.give(XmlPull::Event::text, std::string(piece));
        pull.m_newText = false;
    }

    static void section(void* user) { static_cast<XmlPull*>(user)->m_newText = true; }

    /// What no other handler takes: of interest are the references to entities, which are not
    /// replaced since this is here (expat.h: XML_SetDefaultHandler).
    static void other(void* user, const XML_Char* text, int size)
    {
        if (size > 0 && *text == '&' && !static_cast<XmlPull*>(user)->m_open.empty())
            XmlHandlers::text(user, text, size);
    }
};

void XmlPull::Free::operator()(XML_ParserStruct* parser) const
{
    XML_ParserFree(parser);
}

XmlPull::XmlPull(Read read) : m_read(std::move(read)), m_parser(XML_ParserCreate(nullptr))
{
    XML_ParserStruct* const parser = m_parser.get();
    if (!parser)
        throw std::bad_alloc();
    XML_SetUserData(parser, this);
    XML_SetElementHandler(parser, XmlHandlers::start, XmlHandlers::end);
    XML_SetCharacterDataHandler(parser, XmlHandlers::text);
    XML_SetCdataSectionHandler(parser, XmlHandlers::section, XmlHandlers::section);
    XML_SetDefaultHandler(parser, XmlHandlers::other);
}

XmlPull::~XmlPull() = default;

void XmlPull::give(Event event, std::string text)
{
    m_ready.push_back({event,
                       std::move(text),
                       {},
                       static_cast<std::int64_t>(XML_GetCurrentLineNumber(m_parser.get())),
                       m_open.size()});
    m_newText = true;
}

void XmlPull::refuse(core::Message fault)
{
    m_fault = std::move(fault);
    give(Event::broken, {});
    m_ended = true;
    XML_StopParser(m_parser.get(), XML_FALSE);
}

core::Message XmlPull::faultOfParser() const
{
    switch (XML_GetErrorCode(m_parser.get())) {
    case XML_ERROR_NO_ELEMENTS:
        return m_open.empty() ? core::Message("no element"_t)
                              : core::message("the file ends within <{}>"_t, m_open.back());
    case XML_ERROR_UNCLOSED_TOKEN:
    case XML_ERROR_UNCLOSED_CDATA_SECTION:
    case XML_ERROR_PARTIAL_CHAR: return "the file ends within a tag or a section"_t;
    case XML_ERROR_TAG_MISMATCH:
        return core::message("another end tag where </{}> was expected"_t,
                             m_open.empty() ? std::string() : m_open.back());
    case XML_ERROR_DUPLICATE_ATTRIBUTE: return "an attribute that is there twice"_t;
    case XML_ERROR_JUNK_AFTER_DOC_ELEMENT: return "text or a second root element"_t;
    case XML_ERROR_UNDEFINED_ENTITY: return "a reference that is none, like '&amp;'"_t;
    case XML_ERROR_BAD_CHAR_REF: return "a reference to a character that XML does not know"_t;
    case XML_ERROR_AMPLIFICATION_LIMIT_BREACH: return "entities that grow without bound"_t;
    case XML_ERROR_UNKNOWN_ENCODING:
    case XML_ERROR_INCORRECT_ENCODING: return "an encoding other than UTF-8, UTF-16 or Latin-1"_t;
    case XML_ERROR_NO_MEMORY: throw std::bad_alloc();
    default: return "signs where XML has none, or bytes that are no text"_t;
    }
}

/// Reads until there is something to give.
void XmlPull::feed()
{
    while (!m_ended && m_ready.size() < 2) { // a last text may go on
        void* const buffer = XML_GetBuffer(m_parser.get(), kBufferSize);
        if (!buffer)
            throw std::bad_alloc();
        const std::size_t size = m_read(static_cast<char*>(buffer), kBufferSize);
        m_fed += static_cast<std::int64_t>(size);
        const XML_Status status =
            XML_ParseBuffer(m_parser.get(), static_cast<int>(size), size == 0);
        if (m_ended)
            return; // refused
        if (status == XML_STATUS_ERROR)
            return refuse(faultOfParser());
        if (size == 0) {
            give(Event::finished, {});
            m_ended = true;
        } else if (m_fed - XML_GetCurrentByteIndex(m_parser.get()) > kMaxTag) {
            refuse("a tag or a comment that is too long"_t);
        }
    }
}

XmlPull::Event XmlPull::next()
{
    if (m_now.event == Event::finished || m_now.event == Event::broken)
        return m_now.event;
    if (m_ready.empty() || (m_ready.size() == 1 && m_ready.front().event == Event::text))
        feed();
    m_now = std::move(m_ready.front());
    m_ready.pop_front();
    return m_now.event;
}

std::optional<std::string_view> XmlPull::attribute(std::string_view name) const
{
    for (const auto& [known, value] : m_now.attributes)
        if (known == name)
            return value;
    return std::nullopt;
}

} // namespace bothways::storage
