package main
import ("testing";"os";"bytes")
func TestZZ(t *testing.T){ var out,errs bytes.Buffer; _=run([]string{"check",os.Getenv("F")}, nil,&out,&errs) }
