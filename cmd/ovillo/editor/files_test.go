package editor

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestManifest: what the manifest of the extension names is there, and is JSON.
func TestManifest(t *testing.T) {
	var m struct {
		Main        string
		Contributes struct {
			Languages []struct {
				ID, Configuration string
				Extensions        []string
			}
			Grammars []struct{ Language, ScopeName, Path string }
		}
	}
	read := func(name string, into any) {
		b, err := os.ReadFile(filepath.Join("vscode", name))
		require.NoError(t, err)
		require.NoError(t, json.Unmarshal(b, into))
	}
	read("package.json", &m)
	require.FileExists(t, filepath.Join("vscode", m.Main))
	require.Equal(t, []string{".ovillo"}, m.Contributes.Languages[0].Extensions)
	var any map[string]any
	read(m.Contributes.Languages[0].Configuration, &any)
	read(m.Contributes.Grammars[0].Path, &any)
	require.Equal(t, any["scopeName"], m.Contributes.Grammars[0].ScopeName)
	require.Equal(t, m.Contributes.Languages[0].ID, m.Contributes.Grammars[0].Language)
}
