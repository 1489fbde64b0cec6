# Fills in what the metainfo file has from elsewhere: the releases of the change log, and addresses, where there are any.
# A store takes pictures from an https address alone; the project has none, so whoever publishes gives one.
set(BOTHWAYS_APP_ID org.example.bothways CACHE STRING
    "Name of the program among all programs. The project has no domain: whoever publishes puts theirs in place of example.org")
set(BOTHWAYS_HOMEPAGE_URL "" CACHE STRING "https address of the program's home page, for its metainfo; empty: none")
set(BOTHWAYS_PICTURES_URL "" CACHE STRING
    "https address of a folder with the files of resources/pictures, for the metainfo; empty: no pictures there")

set(bothways_urls "")
if(BOTHWAYS_HOMEPAGE_URL)
    string(APPEND bothways_urls "  <url type=\"homepage\">${BOTHWAYS_HOMEPAGE_URL}</url>\n")
endif()
if(BOTHWAYS_PICTURES_URL)
    string(APPEND bothways_urls
"  <screenshots>
    <screenshot type=\"default\">
      <caption>A study: runs, findings, and the verdict</caption>
      <caption xml:lang=\"de\">Eine Studie: Fahrten, Befunde und das Urteil</caption>
      <image type=\"source\">${BOTHWAYS_PICTURES_URL}/main_window.png</image>
    </screenshot>
    <screenshot>
      <caption>Roadside mode, for the passenger seat</caption>
      <caption xml:lang=\"de\">Vor Ort: eine Seite für den Beifahrersitz</caption>
      <image type=\"source\">${BOTHWAYS_PICTURES_URL}/roadside.png</image>
    </screenshot>
  </screenshots>
")
endif()

# "## 0.1.0 (2026-11-30)" and the lines below it that begin with "- ".
set(bothways_releases "")
set(bothways_notes "")
function(bothways_end_release)
    if(bothways_release)
        set(text "    <release version=\"${bothways_release}\" date=\"${bothways_release_date}\">\n")
        string(APPEND text "      <description>\n        <ul>\n${bothways_notes}        </ul>\n      </description>\n")
        set(bothways_releases "${bothways_releases}${text}    </release>\n" PARENT_SCOPE)
    endif()
endfunction()
file(STRINGS CHANGELOG bothways_lines ENCODING UTF-8)
foreach(line IN LISTS bothways_lines)
    if(line MATCHES "^## ([0-9.]+) [(](....-..-..)[)]$")
        set(found ${CMAKE_MATCH_1})
        set(found_date ${CMAKE_MATCH_2})
        bothways_end_release()
        set(bothways_release ${found})
        set(bothways_release_date ${found_date})
        set(bothways_notes "")
    elseif(line MATCHES "^- (.*)$")
        set(note "${CMAKE_MATCH_1}")
        string(REPLACE "&" "&amp;" note "${note}")
        string(REPLACE "<" "&lt;" note "${note}")
        string(REPLACE ">" "&gt;" note "${note}")
        string(APPEND bothways_notes "          <li>${note}</li>\n")
    endif()
endforeach()
bothways_end_release()
configure_file(bothways.metainfo.xml.in ${CMAKE_CURRENT_BINARY_DIR}/${BOTHWAYS_APP_ID}.metainfo.xml @ONLY)
